using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Billing;

/// <summary>Bills by a tariff, line by line, each line rounded as the tariff says (E-07).</summary>
public static class BillCalculation
{
    /// <summary>The bills of a year. In a steady year a ratchet that looks back past the first month finds the same year's later months.</summary>
    /// <param name="tariff">The tariff.</param>
    /// <param name="months">Consecutive billing months, twelve for a year.</param>
    /// <param name="terms">Price factor, power factor and the year before.</param>
    /// <exception cref="ArgumentException">The tariff has a power-factor clause and the terms give no power factor.</exception>
    public static IReadOnlyList<MonthlyBill> Year(Tariff tariff, IReadOnlyList<MeteredMonth> months, BillTerms terms)
    {
        var demand = new BilledDemand(tariff, months, terms);
        return [.. months.Select((month, index) => Month(new(tariff, month, terms, demand.InMonth(index))))];
    }

    private static MonthlyBill Month(BillBasis basis)
    {
        List<BillLine> lines =
        [
            .. FixedLines.Of(basis),
            .. EnergyLines.Of(basis),
            .. AdjustmentLines.Of(basis),
            .. DemandLines.Of(basis),
            .. ReactiveLine.Of(basis),
            .. CreditLine.Of(basis),
        ];
        lines.AddRange(MinimumLine.Of(basis, lines));
        return new(basis.Month.Month, [.. lines, .. TaxLines.Of(basis, lines)]) { First = basis.Month.First, Last = basis.Month.Last };
    }
}
