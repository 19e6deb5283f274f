using NodaTime;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Billing;

/// <summary>Which energy price holds in each month and hour of the day, weekdays and weekends apart: 2 × 12 × 24 cells.</summary>
/// <remarks>Tariffs that change within a month or within an hour do not fit and have no table.</remarks>
public sealed class HourTable
{
    private const int Months = 12;
    private const int Hours = 24;
    private readonly IReadOnlyList<int>[] _cells;

    private HourTable(IReadOnlyList<EnergyCharge> periods, IReadOnlyList<int>[] cells) => (Periods, _cells) = (periods, cells);

    /// <summary>Prices by name, in order; their own hours say nothing.</summary>
    public IReadOnlyList<EnergyCharge> Periods { get; }

    /// <summary>Places in <see cref="Periods"/> of the prices that claim a cell: one in a sound tariff, none is a gap, more an overlap.</summary>
    /// <param name="weekend">Weekends and holidays, or weekdays.</param>
    /// <param name="month">Month. [1–12]</param>
    /// <param name="hour">Hour that begins then. [0–23]</param>
    public IReadOnlyList<int> At(bool weekend, int month, int hour) => _cells[Cell(weekend, month, hour)];

    /// <summary>The table of some charges; null when one of them begins or ends within a month or within an hour.</summary>
    /// <param name="charges">Energy charges of a tariff.</param>
    public static HourTable? Of(IReadOnlyList<EnergyCharge> charges)
    {
        if (!charges.All(charge => FitsMonths(charge.When) && charge.When.Windows.All(w => IsWholeHour(w.From) && IsWholeHour(w.To) && (w.To == LocalTime.Midnight || w.To > w.From))))
            return null;
        var periods = EnergyPeriod.Of(charges);
        var periodOf = periods.Index().SelectMany(p => p.Item.Charges.Select(charge => (charge, p.Index))).ToDictionary(p => p.charge, p => p.Index);
        var cells = new IReadOnlyList<int>[2 * Months * Hours];
        foreach (var weekend in new[] { false, true })
            for (var month = 1; month <= Months; month++)
            {
                bool[] inForce = [.. charges.Select(charge => TariffDay.InForce(charge.When, new LocalDate(2027, month, 15)))];
                foreach (var piece in TariffDay.Pieces(charges, inForce, weekend))
                    for (var tick = piece.From; tick < piece.To; tick += NodaConstants.TicksPerHour)
                        cells[Cell(weekend, month, (int)(tick / NodaConstants.TicksPerHour))] = [.. piece.Claims.Select(charge => periodOf[charge])];
            }
        return new([.. periods.Select(period => period.Price)], cells);
    }

    /// <summary>The table with one price at all hours.</summary>
    /// <param name="periods">Prices; the first holds.</param>
    public static HourTable AllHours(IReadOnlyList<EnergyCharge> periods) =>
        new(periods, [.. Enumerable.Repeat<IReadOnlyList<int>>([0], 2 * Months * Hours)]);

    /// <summary>The table with more prices to paint with.</summary>
    /// <param name="period">Price that holds nowhere yet.</param>
    public HourTable With(EnergyCharge period) => new([.. Periods, period with { When = new() }], _cells);

    /// <summary>One price, and no other, in a block of months and hours.</summary>
    /// <param name="period">Place of the price in <see cref="Periods"/>.</param>
    /// <param name="days">Kind of day.</param>
    /// <param name="months">First and last month, included; the last may lie before the first and so cross New Year. [1–12]</param>
    /// <param name="hours">First and last hour, included; the last may lie before the first and so cross midnight. [0–23]</param>
    public HourTable Paint(int period, DayKind days, (int First, int Last) months, (int First, int Last) hours)
    {
        IReadOnlyList<int> claim = [period];
        var cells = _cells.ToArray();
        foreach (var weekend in days switch { DayKind.Weekday => new[] { false }, DayKind.Weekend => [true], _ => [false, true] })
            for (var month = 1; month <= Months; month++)
                for (var hour = 0; hour < Hours; hour++)
                    if (IsWithin(month, months) && IsWithin(hour, hours))
                        cells[Cell(weekend, month, hour)] = claim;
        return new(Periods, cells);
    }

    /// <summary>Charges that say the same as the table: by price, one for each run of months with the same hours. A price without any hour is left out.</summary>
    public IReadOnlyList<EnergyCharge> ToCharges() => [.. Periods.SelectMany((price, period) => HourRuns.Of(month => Pattern(period, month)).Select(when => price with { When = when }))];

    private HourRuns.Pattern Pattern(int period, int month) => new(Mask(period, false, month), Mask(period, true, month));

    private int Mask(int period, bool weekend, int month) =>
        Enumerable.Range(0, Hours).Where(hour => At(weekend, month, hour).Contains(period)).Sum(hour => 1 << hour);

    private static int Cell(bool weekend, int month, int hour) => ((weekend ? Months : 0) + month - 1) * Hours + hour;

    private static bool IsWithin(int value, (int First, int Last) range) =>
        range.First <= range.Last ? value >= range.First && value <= range.Last : value >= range.First || value <= range.Last;

    private static bool IsWholeHour(LocalTime time) => time.TickOfDay % NodaConstants.TicksPerHour == 0;

    // 28 February ends the month too: it is what a reader without leap years in mind types.
    private static bool FitsMonths(TariffHours when) => (when.Start, when.End) switch
    {
        (null, null) => true,
        ({ Day: 1 }, { } end) => end.Day >= (end.Month == 2 ? 28 : DateTime.DaysInMonth(2028, end.Month)),
        _ => false,
    };
}
