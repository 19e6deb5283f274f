using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Engine.Economics.Measures;

/// <summary>What an option saves and what it ties up, both brought to the start: 10 CFR 436.20 to 436.22 (E-95).</summary>
/// <param name="Savings">Present value of the bill and fuel saved.</param>
/// <param name="Invested">Present value of first cost and replacements made, less replacements avoided and what is left at the end.</param>
/// <param name="Rate">Discount rate. [unitless a year, above −1]</param>
/// <param name="Years">Length of the study. [years]</param>
/// <remarks>
/// Replacements and what is left belong to the investment (ASTM E964), so that the ratio asks what each unit of money tied up in
/// hardware brings back on the bill. Take the flows of <see cref="OptionResult.CashFlow"/> and the rate of the study.
/// </remarks>
public sealed record InvestmentWorth(Money Savings, Money Invested, double Rate, int Years)
{
    /// <summary>Net savings; without anything left at the end the same as the net present value.</summary>
    public Money NetSavings => LifeCycleMeasures.NetSavings(Savings, Invested);

    /// <summary>Savings-to-investment ratio. [unitless]; null when nothing is invested, and the ratio then says nothing.</summary>
    public double? SavingsToInvestment => Invested > Money.Zero ? LifeCycleMeasures.SavingsToInvestment(Savings, Invested) : null;

    /// <summary>Adjusted internal rate of return, savings reinvested at the discount rate. [unitless a year]; null without a ratio of zero or more.</summary>
    public double? AdjustedRateOfReturn =>
        SavingsToInvestment is >= 0 and var ratio ? LifeCycleMeasures.AdjustedRateOfReturn(ratio, Rate, Years) : null;

    /// <summary>Whether the option costs less over the study than keeping: 436.18(c).</summary>
    public bool IsCostEffective => NetSavings > Money.Zero;

    /// <summary>From the flows of an option.</summary>
    /// <param name="flows">Net flows against keeping, year 0 first; one later year at least.</param>
    /// <param name="rate">Discount rate. [unitless a year, above −1]</param>
    /// <param name="leftAtEnd">Worth, at the end of the study, of what is left.</param>
    public static InvestmentWorth Of(IReadOnlyList<CashFlowYear> flows, double rate, Money leftAtEnd = default)
    {
        var years = Require.InRange(flows.Count - 1, 1, int.MaxValue, nameof(flows));
        var savings = PresentValue.Of(rate, [.. flows.Select(year => year.EnergySaving)]);
        var hardware = PresentValue.Of(rate, [.. flows.Select(year => year.FirstCost + year.MaintenanceSaving)]);
        return new(savings, -hardware - leftAtEnd * DiscountFactors.Single(rate, years), rate, (int)years);
    }
}
