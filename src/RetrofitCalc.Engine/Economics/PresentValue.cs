using NodaTime;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Economics;

/// <summary>Worth today of a row of yearly or dated amounts (E-16). Receipts positive, payments negative.</summary>
public static class PresentValue
{
    /// <summary>Net present value; the first amount is due now, the others at the end of each year.</summary>
    /// <param name="rate">Discount rate. [unitless a year, above −1]</param>
    /// <param name="flows">Amounts, year 0 first.</param>
    /// <remarks>Spreadsheets discount the first amount too: divide by 1 + rate to compare.</remarks>
    public static Money Of(double rate, IReadOnlyList<Money> flows)
    {
        var factor = 1 / (1 + rate);
        var sum = Money.Zero;
        for (var year = flows.Count - 1; year >= 0; year--) sum = sum * factor + flows[year];
        return sum;
    }

    /// <summary>Net present value of dated amounts at the day of the first.</summary>
    /// <param name="rate">Discount rate. [unitless a year, above −1]</param>
    /// <param name="flows">Amounts with their days.</param>
    /// <remarks>Years are actual days over 365, leap years too, as spreadsheets count them (LibreOffice help).</remarks>
    public static Money OfDated(double rate, IReadOnlyList<DatedAmount> flows) =>
        flows.Aggregate(Money.Zero, (sum, flow) => sum + flow.Amount * DiscountFactors.Single(rate, YearsAfterFirst(flow, flows)));

    /// <summary>Amount grown by one rate after the other.</summary>
    /// <param name="amount">Amount at the start.</param>
    /// <param name="rates">Rate of each period. [unitless]</param>
    public static Money Grown(Money amount, IEnumerable<double> rates) => rates.Aggregate(amount, (sum, rate) => sum * (1 + rate));

    private static double YearsAfterFirst(DatedAmount flow, IReadOnlyList<DatedAmount> flows) =>
        Period.DaysBetween(flows[0].Day, flow.Day) / 365.0;
}

/// <summary>An amount on a day.</summary>
/// <param name="Day">Day it falls due.</param>
/// <param name="Amount">Receipt positive, payment negative.</param>
public readonly record struct DatedAmount(LocalDate Day, Money Amount);
