using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Engine.Billing;

/// <summary>Credit for each whole hour of use, energy over billed demand, above a number of hours (E-21).</summary>
internal static class CreditLine
{
    public static IEnumerable<BillLine> Of(BillBasis basis)
    {
        if (basis.Tariff.LoadFactorCredit is not { } credit || basis.DemandOf(credit.Demand) is not { Kilowatts: > 0 and var demand })
            yield break;
        var energy = basis.Month.Energy.Sum(each => each?.KilowattHours ?? 0);
        var hours = BillRounding.WholeHours(energy / demand - credit.AboveHours);
        if (hours > 0)
            yield return basis.Line(BillLineKind.Credit, 0, credit.Name, new(hours * demand, "h·kW", -credit.PricePerKilowatt.PerKilowatt));
    }
}
