using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Economics;

/// <summary>Net flows of an option against keeping.</summary>
/// <remarks>
/// E-14. Nominal; end of each year. Year 1 brings the first year's saving, later years the steady one. Prices of the start hold
/// through year 1 and rise from then on: in year y the saving is S · (1+e)^(y−1). A replacement falls in the year of its day, at the price of that year.
/// </remarks>
internal static class CashFlows
{
    /// <summary>Flows of the start and of each year of the study.</summary>
    /// <param name="firstCost">First cost after incentive.</param>
    /// <param name="saving">Bill and fuel saved, at prices of the start.</param>
    /// <param name="maintenanceSaving">Replacements avoided less made, by year, year 1 first, at prices of the start.</param>
    /// <param name="assumptions">Rates.</param>
    public static IReadOnlyList<CashFlowYear> Of(
        Money firstCost, YearlySaving saving, IReadOnlyList<Money> maintenanceSaving, Assumptions assumptions)
    {
        var flows = new List<CashFlowYear>(maintenanceSaving.Count + 1) { new(0, -firstCost, Money.Zero, Money.Zero, -firstCost, -firstCost) };
        for (var year = 1; year <= maintenanceSaving.Count; year++)
        {
            var energy = (year == 1 ? saving.FirstYear : saving.Steady) * Math.Pow(1 + assumptions.EnergyEscalation, year - 1);
            var maintenance = maintenanceSaving[year - 1] * Math.Pow(1 + assumptions.CostEscalation, year - 1);
            var net = energy + maintenance;
            flows.Add(new CashFlowYear(year, Money.Zero, energy, maintenance, flows[^1].Cumulative + net,
                flows[^1].CumulativeDiscounted + net * DiscountFactors.Single(assumptions.DiscountRate, year)));
        }
        return flows;
    }
}
