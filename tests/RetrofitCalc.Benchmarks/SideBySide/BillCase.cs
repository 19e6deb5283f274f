namespace RetrofitCalc.Benchmarks.SideBySide;

/// <summary>A year of 15-minute values under a tariff, as plain numbers that a script and a sheet can take.</summary>
internal sealed record BillCase(
    IReadOnlyList<BillInterval> Intervals, IReadOnlyList<double> EnergyPrices, IReadOnlyList<double> DemandPrices, double Fixed)
{
    /// <summary>Load and place in a table of months and energy charges: the least a bill must read.</summary>
    public (double Kilowatts, int Cell)[] Plain { get; } = [.. Intervals.Select(interval => (interval.Kilowatts, interval.Month * EnergyPrices.Count + interval.EnergyCharge))];
}

/// <summary>One quarter of an hour.</summary>
/// <param name="Kilowatts">Average load. [kW]</param>
/// <param name="Month">Month. [0–11]</param>
/// <param name="EnergyCharge">Index of the energy charge that applies.</param>
/// <param name="Counts">For each demand charge: whether it counts this interval.</param>
internal readonly record struct BillInterval(double Kilowatts, int Month, int EnergyCharge, bool[] Counts);
