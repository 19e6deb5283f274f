using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Billing;

/// <summary>Which energy price holds in each month and hour of the day, weekdays and weekends apart: 2 × 12 × 24 cells.</summary>
/// <remarks>Tariffs that change within a month or within an hour do not fit and have no table.</remarks>
public sealed class HourTable
{
    private readonly HourCells _cells;

    private HourTable(IReadOnlyList<EnergyCharge> periods, HourCells cells) => (Periods, _cells) = (periods, cells);

    /// <summary>Prices by name, in order; their own hours say nothing.</summary>
    public IReadOnlyList<EnergyCharge> Periods { get; }

    /// <summary>Places in <see cref="Periods"/> of the prices that claim a cell: one in a sound tariff, none is a gap, more an overlap.</summary>
    /// <param name="weekend">Weekends and holidays, or weekdays.</param>
    /// <param name="month">Month. [1–12]</param>
    /// <param name="hour">Hour that begins then. [0–23]</param>
    public IReadOnlyList<int> At(bool weekend, int month, int hour) => _cells.At(weekend, month, hour);

    /// <summary>The table of some charges; null when one of them begins or ends within a month or within an hour (see <see cref="Misfits"/>).</summary>
    /// <param name="charges">Energy charges of a tariff.</param>
    public static HourTable? Of(IReadOnlyList<EnergyCharge> charges)
    {
        var periods = EnergyPeriod.Of(charges);
        var periodOf = periods.Index().SelectMany(p => p.Item.Charges.Select(charge => (charge, p.Index))).ToDictionary(p => p.charge, p => p.Index);
        return HourCells.Of([.. charges.Select(charge => charge.When)]) is { } cells
            ? new([.. periods.Select(period => period.Price)], cells.Moved(charge => periodOf[charge]))
            : null;
    }

    /// <summary>A table from twelve rows of 24 hours for each kind of day, as rate records hold it.</summary>
    /// <param name="periods">Prices.</param>
    /// <param name="cells">Places in <paramref name="periods"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A cell holds a price that is not there.</exception>
    public static HourTable Of(IReadOnlyList<EnergyCharge> periods, HourCells cells) =>
        new(periods, cells.Moved(place => place < periods.Count ? place : throw new ArgumentOutOfRangeException(nameof(cells), place, $"There are {periods.Count} prices.")));

    /// <summary>Why charges have no table, in words; empty when they have one.</summary>
    /// <param name="charges">Energy charges of a tariff.</param>
    public static IReadOnlyList<string> Misfits(IReadOnlyList<EnergyCharge> charges) =>
        [.. charges.SelectMany(charge => HourCells.Misfits(charge.Name, charge.When))];

    /// <summary>The table with one price at all hours.</summary>
    /// <param name="periods">Prices; the first holds.</param>
    public static HourTable AllHours(IReadOnlyList<EnergyCharge> periods)
    {
        IReadOnlyList<IReadOnlyList<int>> rows = [.. Enumerable.Repeat<IReadOnlyList<int>>(new int[24], 12)];
        return new(periods, HourCells.FromRows(rows, rows));
    }

    /// <summary>The table with more prices to paint with.</summary>
    /// <param name="period">Price that holds nowhere yet.</param>
    public HourTable With(EnergyCharge period) => new([.. Periods, period with { When = new() }], _cells);

    /// <summary>One price, and no other, in a block of months and hours.</summary>
    /// <param name="period">Place of the price in <see cref="Periods"/>.</param>
    /// <param name="days">Kind of day.</param>
    /// <param name="months">First and last month, included; the last may lie before the first and so cross New Year. [1–12]</param>
    /// <param name="hours">First and last hour, included; the last may lie before the first and so cross midnight. [0–23]</param>
    public HourTable Paint(int period, DayKind days, (int First, int Last) months, (int First, int Last) hours) =>
        new(Periods, _cells.Paint(period, days, months, hours));

    /// <summary>Twelve rows of 24 hours of places in <see cref="Periods"/>; null where prices overlap.</summary>
    /// <param name="weekend">Weekends and holidays, or weekdays.</param>
    public IReadOnlyList<IReadOnlyList<int>>? Rows(bool weekend) => _cells.Rows(weekend);

    /// <summary>Charges that say the same as the table: by price, one for each run of months with the same hours. A price without any hour is left out.</summary>
    public IReadOnlyList<EnergyCharge> ToCharges() => [.. Periods.SelectMany((price, period) => _cells.When(period).Select(when => price with { When = when }))];
}
