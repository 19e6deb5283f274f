using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Engine.Billing;

/// <summary>
/// What lighting and plant add to a bill, spread over their energy: the bill with everything less the bill of the base load alone (E-09).
/// Energy charges go by kilowatt-hours under that charge in that month, blocks in proportion; demand by kilowatt-hours of the month.
/// </summary>
/// <param name="PerKilowattHour">Price of lighting and plant energy in each cell of the tariff calendar. [currency/kWh]</param>
/// <param name="Unattributed">Demand billed in months without lighting energy, by a ratchet. [currency]</param>
public sealed record LightingCost(IReadOnlyList<double> PerKilowattHour, Money Unattributed)
{
    /// <summary>Spreads the difference of two years of bills.</summary>
    /// <param name="whole">Bills with everything.</param>
    /// <param name="baseOnly">Bills of the base load alone.</param>
    /// <param name="cellKilowattHours">Lighting and plant energy in each cell. [kWh]</param>
    /// <param name="tariff">The tariff over the year.</param>
    public static LightingCost Of(
        IReadOnlyList<MonthlyBill> whole, IReadOnlyList<MonthlyBill> baseOnly, double[] cellKilowattHours, TariffCalendar tariff)
    {
        var prices = new double[tariff.Cells];
        var unattributed = 0.0;
        for (var month = 0; month < 12; month++)
        {
            var cells = Enumerable.Range(month * tariff.Charges, tariff.Charges).ToList();
            var monthKilowattHours = cells.Sum(cell => cellKilowattHours[cell]);
            var byMonth = Sum(whole[month], NotEnergy) - Sum(baseOnly[month], NotEnergy);
            foreach (var (charge, cell) in cells.Index())
            {
                var added = Sum(whole[month], line => IsOf(line, charge)) - Sum(baseOnly[month], line => IsOf(line, charge));
                if (cellKilowattHours[cell] > 0)
                    prices[cell] = added / cellKilowattHours[cell];
                else
                    byMonth += added;
            }
            if (monthKilowattHours > 0)
                cells.ForEach(cell => prices[cell] += byMonth / monthKilowattHours);
            else
                unattributed += byMonth;
        }
        return new(prices, Money.FromUnits(unattributed));
    }

    private static bool NotEnergy(BillLine line) => line.Kind != BillLineKind.Energy;

    private static bool IsOf(BillLine line, int charge) => line.Kind == BillLineKind.Energy && line.Charge == charge;

    private static double Sum(MonthlyBill bill, Func<BillLine, bool> takes) => bill.Lines.Where(takes).Sum(line => line.Amount.Units);
}
