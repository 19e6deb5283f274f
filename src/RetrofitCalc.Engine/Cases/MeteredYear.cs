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
            var first = peaks.Count;
            peaks.AddRange(PeaksOf(load, number, added, lit));
            return MonthOf(load, number, cells, peaks[first..]);
        }).ToArray();
        return new(months, peaks, Energy.FromKilowattHours(cells.Sum()));
    }

    private static IEnumerable<DemandPeak> PeaksOf(SiteLoad load, int month, double[] added, double[] lighting) =>
        from charge in load.Demand.Index()
        let windows = charge.Item[month]
        where windows.InForce
        let highest = windows.Highest(added, lighting)
        select new DemandPeak(load.Tariff.Year.Months[month].Name, charge.Index, Power.FromKilowatts(highest.Total), Power.FromKilowatts(highest.Lighting));

    private static MeteredMonth MonthOf(SiteLoad load, int number, double[] cells, List<DemandPeak> peaks)
    {
        var (month, tariff) = (load.Tariff.Year.Months[number], load.Tariff.Tariff);
        return new(month.Name,
            [.. tariff.Energy.Select((_, charge) => EnergyOf(load, number, cells, cell => cell.Charge == charge))],
            [.. tariff.Demand.Select((_, charge) => peaks.Find(peak => peak.Charge == charge)?.Total)])
        {
            First = month.First,
            Last = month.Last,
            Adjustments = [.. tariff.Adjustments.Select((_, adjustment) => EnergyOf(load, number, cells, cell => cell.Adjustments.Contains(adjustment)))],
            EnergyShares = load.EnergyShares[number],
            DemandShares = load.DemandShares[number],
        };
    }

    private static Energy? EnergyOf(SiteLoad load, int month, double[] cells, Func<TariffCell, bool> isUnder)
    {
        var (hours, kilowattHours) = (0.0, 0.0);
        foreach (var cell in load.Tariff.CellsOf[month])
            if (isUnder(load.Tariff.Cells[cell]))
                (hours, kilowattHours) = (hours + load.Tariff.CellHours[cell], kilowattHours + cells[cell]);
        return hours > 0 ? Energy.FromKilowattHours(Math.Max(0, kilowattHours)) : null;
    }

    private static double[] Sum(double[] a, double[] b)
    {
        var sum = new double[a.Length];
        for (var i = 0; i < sum.Length; i++)
            sum[i] = a[i] + b[i];
        return sum;
    }
}
