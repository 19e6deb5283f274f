using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Billing;

/// <summary>Reactive demand above its free share, at the highest measured demand of the charges the clause names (E-19).</summary>
internal static class ReactiveLine
{
    /// <summary>Name of the line, by which a tax may name it.</summary>
    public const string Name = "Reactive demand";

    public static IEnumerable<BillLine> Of(BillBasis basis)
    {
        if (basis.Tariff.PowerFactor is not ReactiveAboveShare clause)
            yield break;
        int[] charges = [.. Enumerable.Range(0, basis.Tariff.Demand.Count).Where(i =>
            basis.Month.Peaks[i] is not null && PowerFactorRule.AppliesTo(clause, basis.Tariff.Demand[i]))];
        if (charges.Length == 0)
            yield break;
        var peak = charges.Max(i => basis.Month.Peaks[i]!.Value);
        var share = Math.Min(1, charges.Sum(basis.DemandShare));
        var kilovars = peak.Kilowatts * Math.Max(0, PowerFactorRule.ReactiveShare(basis.Terms.PowerFactor) - clause.FreeShare);
        yield return basis.Line(BillLineKind.Reactive, 0, Name, new(kilovars, "kvar", clause.PricePerKilovar.PerKilowatt * share));
    }
}
