using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Engine.Billing;

/// <summary>Prices by kilowatt-hour on top of the energy charges, at the price of the billing month's calendar month.</summary>
internal static class AdjustmentLines
{
    public static IEnumerable<BillLine> Of(BillBasis basis)
    {
        for (var i = 0; i < basis.Tariff.Adjustments.Count; i++)
            if (basis.Month.Adjustments[i] is { } energy)
            {
                var (name, prices) = (basis.Tariff.Adjustments[i].Name, basis.Tariff.Adjustments[i].Prices);
                var price = prices[prices.Count == 1 ? 0 : basis.Month.Month.Month - 1];
                yield return basis.Line(BillLineKind.Adjustment, i, name, new(energy.KilowattHours, "kWh", price.PerKilowattHour));
            }
    }
}
