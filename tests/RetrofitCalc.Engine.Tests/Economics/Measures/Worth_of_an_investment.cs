using CsCheck;
using RetrofitCalc.Engine.Economics;
using RetrofitCalc.Engine.Economics.Measures;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Engine.Tests.Economics.Measures;

/// <summary>
/// By hand: first cost 4,000; 900 a year saved for ten years; 250 of lamps avoided in year 4, 400 of tubes in year 8; worth 300 at the
/// end; 5 %. Factors: UPV 7.721735; SPV 4, 8, 10: 0.822702, 0.676839, 0.613913.
/// </summary>
public class Worth_of_an_investment
{
    private static readonly InvestmentWorth Case = InvestmentWorth.Of(Flows(4_000, 900, 10, (4, 250), (8, -400)), 0.05, Money.FromUnits(300));

    [Fact] // 900 · 7.721735
    public void sets_the_bill_saved() => Assert.Equal(6_949.56, Case.Savings.Units, 0.01);

    [Fact] // 4,000 − 205.68 + 270.74 − 184.17
    public void against_all_hardware_at_its_own_time() => Assert.Equal(3_880.89, Case.Invested.Units, 0.01);

    [Fact]
    public void gives_the_ratio_and_net_savings()
    {
        Assert.Equal(1.79071, Case.SavingsToInvestment!.Value, 1e-5);
        Assert.Equal(3_068.67, Case.NetSavings.Units, 0.02);
        Assert.True(Case.IsCostEffective);
    }

    [Fact] // 436.22: savings reinvested at 5 % are 900 · 12.577893 = 11,320.10 at the end; (11,320.10 / 3,880.89)^(1/10) − 1
    public void gives_the_rate_at_which_the_investment_would_grow_to_the_reinvested_savings() =>
        Assert.Equal(Math.Pow(900 * 12.577893 / 3_880.89, 0.1) - 1, Case.AdjustedRateOfReturn!.Value, 1e-6);

    [Fact] // 10,000; 1,500 a year; 3 %; 15 years: 1.791 and 7.08 %
    public void agrees_with_the_case_without_replacements()
    {
        var plain = InvestmentWorth.Of(Flows(10_000, 1_500, 15), 0.03);
        Assert.Equal(1.790690, plain.SavingsToInvestment!.Value, 1e-6);
        Assert.Equal(0.0708, plain.AdjustedRateOfReturn!.Value, 5e-5);
    }

    [Fact]
    public void has_no_ratio_where_nothing_is_invested()
    {
        var free = InvestmentWorth.Of(Flows(100, 50, 5, (1, 500)), 0.05);
        Assert.True(free.Invested < Money.Zero);
        Assert.Null(free.SavingsToInvestment);
        Assert.Null(free.AdjustedRateOfReturn);
        Assert.True(free.IsCostEffective);
    }

    [Fact]
    public void has_no_adjusted_rate_where_the_bill_rises()
    {
        var worse = InvestmentWorth.Of(Flows(1_000, -20, 5), 0.05);
        Assert.True(worse.SavingsToInvestment < 0);
        Assert.Null(worse.AdjustedRateOfReturn);
        Assert.False(worse.IsCostEffective);
    }

    [Fact] // 436.18(c): net savings above zero, ratio above one, adjusted rate above the discount rate
    public void is_cost_effective_by_all_three_measures_or_by_none() =>
        Gen.Select(Gen.Double[100, 9_000], Gen.Double[1, 2_000], Gen.Int[1, 25], Gen.Double[0.001, 0.2]).Sample((first, saved, years, rate) =>
        {
            var worth = InvestmentWorth.Of(Flows(first, saved, years), rate);
            if (Math.Abs(worth.NetSavings.Units) < 1e-6) return;
            Assert.Equal(worth.IsCostEffective, worth.SavingsToInvestment > 1);
            Assert.Equal(worth.IsCostEffective, worth.AdjustedRateOfReturn > rate);
            Assert.Equal(PresentValue.Of(rate, [.. Flows(first, saved, years).Select(year => year.Net)]).Units, worth.NetSavings.Units, 1e-6);
        }, iter: 1_000);

    internal static CashFlowYear[] Flows(double first, double saved, int years, params (int Year, double Amount)[] replacements) =>
    [
        new(0, Money.FromUnits(-first), Money.Zero, Money.Zero, Money.Zero, Money.Zero),
        .. Enumerable.Range(1, years).Select(year => new CashFlowYear(
            year, Money.Zero, Money.FromUnits(saved), Money.FromUnits(replacements.Where(r => r.Year == year).Sum(r => r.Amount)), Money.Zero, Money.Zero)),
    ];
}
