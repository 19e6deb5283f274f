using RetrofitCalc.Engine.Billing;
using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Engine.Cases;

/// <summary>What the meter shows, or would show, in twelve billing months.</summary>
/// <param name="Months">The months; an energy below zero counts as zero there.</param>
/// <param name="Peaks">Highest windows behind the demand charges, month by month.</param>
/// <param name="Energy">Energy of the year, what lies below zero included.</param>
internal sealed record MeteredYear(IReadOnlyList<MeteredMonth> Months, IReadOnlyList<DemandPeak> Peaks, Energy Energy)
{
    /// <summary>The rest of the meter with some lighting on it.</summary>
    /// <param name="load">When load falls.</param>
    /// <param name="rest">The rest of the meter.</param>
    /// <param name="lighting">Lighting and plant; null for none.</param>
    public static MeteredYear Of(SiteLoad load, RestOfMeter rest, CaseLoad? lighting)
    {
        double[] cells = lighting is null ? rest.CellKilowattHours : Sum(rest.CellKilowattHours, lighting.CellKilowattHours);
        double[] lit = lighting?.StateKilowatts ?? new double[rest.StateKilowatts.Length];
        var added = Sum(rest.StateKilowatts, lit);
        var peaks = new List<DemandPeak>();
        var months = load.Tariff.Year.Months.Select((month, number) =>
        {
            var totals = new Power?[load.Demand.Count];
            foreach (var peak in PeaksOf(load, number, added, lit))
            {
                peaks.Add(peak);
                totals[peak.Charge] = peak.Total;
            }
            return MonthOf(load, number, cells, totals);
        }).ToArray();
        return new(months, peaks, Energy.FromKilowattHours(cells.Sum()));
    }

    private static IEnumerable<DemandPeak> PeaksOf(SiteLoad load, int month, double[] added, double[] lighting)
    {
        for (var charge = 0; charge < load.Demand.Count; charge++)
        {
            var windows = load.Demand[charge][month];
            if (!windows.InForce)
                continue;
            var highest = windows.Highest(added, lighting);
            yield return new(load.Tariff.Year.Months[month].Name, charge, Power.FromKilowatts(highest.Total), Power.FromKilowatts(highest.Lighting));
        }
    }

    private static MeteredMonth MonthOf(SiteLoad load, int number, double[] cells, Power?[] peaks)
    {
        var (month, tariff) = (load.Tariff.Year.Months[number], load.Tariff.Tariff);
        var of = new MonthCells(load.Tariff, number, cells);
        var (energy, adjusted) = (new Energy?[tariff.Energy.Count], new Energy?[tariff.Adjustments.Count]);
        for (var charge = 0; charge < energy.Length; charge++)
            energy[charge] = EnergyOf(of, charge, static (cell, charge) => cell.Charge == charge);
        for (var adjustment = 0; adjustment < adjusted.Length; adjustment++)
            adjusted[adjustment] = EnergyOf(of, adjustment, static (cell, adjustment) => cell.Adjustments.Contains(adjustment));
        return new(month.Name, energy, peaks)
        {
            First = month.First,
            Last = month.Last,
            Adjustments = adjusted,
            EnergyShares = load.EnergyShares[number],
            DemandShares = load.DemandShares[number],
        };
    }

    private static Energy? EnergyOf(MonthCells month, int price, Func<TariffCell, int, bool> isUnder)
    {
        var (hours, kilowattHours) = (0.0, 0.0);
        foreach (var cell in month.Tariff.CellsOf[month.Number])
            if (isUnder(month.Tariff.Cells[cell], price))
                (hours, kilowattHours) = (hours + month.Tariff.CellHours[cell], kilowattHours + month.KilowattHours[cell]);
        return hours > 0 ? Energy.FromKilowattHours(Math.Max(0, kilowattHours)) : null;
    }

    private readonly record struct MonthCells(TariffCalendar Tariff, int Number, double[] KilowattHours);

    private static double[] Sum(double[] a, double[] b)
    {
        var sum = new double[a.Length];
        for (var i = 0; i < sum.Length; i++)
            sum[i] = a[i] + b[i];
        return sum;
    }
}
