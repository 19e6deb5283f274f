using RetrofitCalc.Engine.Economics;
using RetrofitCalc.Engine.Economics.Measures;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Tests.Economics.Measures;

public class Equal_yearly_amounts
{
    [Theory] // tables of interest factors: A/P 10 %, 5 years 0.26380; 3 %, 20 years 0.06722; no interest: one part a year
    [InlineData(0.10, 5, 0.26380)]
    [InlineData(0.03, 20, 0.06722)]
    [InlineData(0, 8, 0.125)]
    public void recover_a_sum_with_interest(double rate, int years, double factor) => Assert.Equal(factor, AnnualEquivalent.Recovery(rate, years), 5e-6);

    [Fact]
    public void are_what_a_lender_would_ask() =>
        Assert.Equal(-LevelPayments.Payment(0.05, 10, Money.FromUnits(4_000)).Units, AnnualEquivalent.Of(Money.FromUnits(4_000), 0.05, 10).Units, 1e-9);

    [Fact] // 1,000 for 4 years at 6 %: 288.59; 1,600 for 8 years: 257.66: the dearer one is cheaper a year
    public void compare_lives_that_are_unlike()
    {
        Assert.Equal(288.59, AnnualEquivalent.Of(Money.FromUnits(1_000), 0.06, 4).Units, 0.005);
        Assert.Equal(257.66, AnnualEquivalent.Of(Money.FromUnits(1_600), 0.06, 8).Units, 0.005);
    }

    [Fact] // 3,880.89 · 0.129505 = 502.59 a year for 9,000 kWh
    public void price_a_kilowatt_hour_not_used()
    {
        var worth = new InvestmentWorth(Money.FromUnits(6_949.56), Money.FromUnits(3_880.89), 0.05, 10);
        Assert.Equal(0.055844, AnnualEquivalent.CostOfConservedEnergy(worth, Energy.FromKilowattHours(9_000))!.Value.PerKilowattHour, 1e-6);
    }

    [Fact] // an option is worth doing just when its kilowatt-hour costs less than one from the grid, at a level price
    public void price_it_at_the_tariff_where_net_savings_are_nothing()
    {
        var worth = InvestmentWorth.Of(Worth_of_an_investment.Flows(4_000, 9_000 * 0.05, 10), 0.05);
        var cost = AnnualEquivalent.CostOfConservedEnergy(worth, Energy.FromKilowattHours(9_000))!.Value.PerKilowattHour;
        var atCost = InvestmentWorth.Of(Worth_of_an_investment.Flows(4_000, 9_000 * cost, 10), 0.05);
        Assert.Equal(0, atCost.NetSavings.Units, 1e-9);
    }

    [Fact]
    public void price_nothing_where_no_energy_is_saved() =>
        Assert.Null(AnnualEquivalent.CostOfConservedEnergy(new(Money.Zero, Money.FromUnits(1), 0.05, 10), Energy.Zero));

    [Fact]
    public void need_a_year() => Assert.Throws<ArgumentOutOfRangeException>(() => AnnualEquivalent.Recovery(0.05, 0));
}
