using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Engine.Billing;

/// <summary>
/// What lighting and plant add to a bill, spread over their energy: the bill with everything less the bill without them (E-09).
/// Energy charges and adjustments go by kilowatt-hours under that charge in that month, blocks in proportion; everything else by
/// kilowatt-hours of the month.
/// </summary>
/// <param name="PerKilowattHour">Price of lighting and plant energy in each cell of the tariff calendar. [currency/kWh]</param>
/// <param name="Unattributed">Demand billed in months without lighting energy, by a ratchet. [currency]</param>
public sealed record LightingCost(IReadOnlyList<double> PerKilowattHour, Money Unattributed)
{
    /// <summary>Spreads the difference of two years of bills.</summary>
    /// <param name="whole">Bills with everything.</param>
    /// <param name="without">Bills without lighting and plant.</param>
    /// <param name="cellKilowattHours">Lighting and plant energy in each cell. [kWh]</param>
    /// <param name="tariff">The tariff over the year.</param>
    public static LightingCost Of(
        IReadOnlyList<MonthlyBill> whole, IReadOnlyList<MonthlyBill> without, double[] cellKilowattHours, TariffCalendar tariff)
    {
        var prices = new double[tariff.Cells.Count];
        var unattributed = 0.0;
        for (var month = 0; month < whole.Count; month++)
        {
            var cells = tariff.CellsOf[month];
            var left = 0.0;
            foreach (var ((kind, charge), added) in Added(whole[month], without[month]))
                left += Spread(added, [.. cells.Where(cell => IsUnder(tariff.Cells[cell], kind, charge))], cellKilowattHours, prices);
            unattributed += Spread(left, cells, cellKilowattHours, prices);
        }
        return new(prices, Money.FromUnits(unattributed));
    }

    private static bool IsUnder(TariffCell cell, BillLineKind kind, int charge) => kind switch
    {
        BillLineKind.Energy => cell.Charge == charge,
        BillLineKind.Adjustment => cell.Adjustments.Contains(charge),
        _ => false,
    };

    private static Dictionary<(BillLineKind Kind, int Charge), double> Added(MonthlyBill whole, MonthlyBill without)
    {
        var added = new Dictionary<(BillLineKind Kind, int Charge), double>();
        foreach (var line in whole.Lines)
            added[(line.Kind, line.Charge)] = added.GetValueOrDefault((line.Kind, line.Charge)) + line.Amount.Units;
        foreach (var line in without.Lines)
            added[(line.Kind, line.Charge)] = added.GetValueOrDefault((line.Kind, line.Charge)) - line.Amount.Units;
        return added;
    }

    /// <summary>Adds an amount to the prices of some cells; what no energy there can carry comes back.</summary>
    private static double Spread(double amount, int[] cells, double[] cellKilowattHours, double[] prices)
    {
        var kilowattHours = cells.Sum(cell => cellKilowattHours[cell]);
        if (kilowattHours <= 0)
            return amount;
        foreach (var cell in cells)
            prices[cell] += amount / kilowattHours;
        return 0;
    }
}
