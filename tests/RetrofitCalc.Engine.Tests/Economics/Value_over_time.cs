using CsCheck;
using RetrofitCalc.Engine.Economics;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Tests.Economics;

public class Value_over_time
{
    [Fact]
    public void falls_with_the_rate_for_money_spent_first_and_returned_later() =>
        Gen.Select(Gen.Double[0, 10_000], Gen.Double[0, 1000].Array[1, 40], Gen.Double[-0.4, 0.9], Gen.Double[0.001, 0.5]).Sample(
            (cost, later, rate, more) =>
            {
                Money[] flows = [Money.FromUnits(-cost), .. later.Select(Money.FromUnits)];
                return PresentValue.Of(rate + more, flows) <= PresentValue.Of(rate, flows);
            });

    [Fact]
    public void is_the_plain_sum_at_a_rate_of_zero() =>
        Assert.Equal(50, PresentValue.Of(0, [Money.FromUnits(-100), Money.FromUnits(70), Money.FromUnits(80)]).Units, 1e-12);

    [Fact]
    public void of_a_level_amount_is_its_uniform_factor()
    {
        Money[] flows = [Money.Zero, .. Enumerable.Repeat(Money.FromUnits(1), 20)];
        Assert.Equal(DiscountFactors.Uniform(0.03, 20), PresentValue.Of(0.03, flows).Units, 1e-12);
        Assert.Equal(20, DiscountFactors.Uniform(0, 20));
    }

    [Fact]
    public void of_an_amount_that_rises_as_fast_as_the_rate_is_the_number_of_years() =>
        Assert.Equal(15, DiscountFactors.UniformRising(0.03, 0.03, 15), 1e-12);

    [Fact]
    public void at_a_real_rate_and_inflation_is_that_of_the_nominal_rate() =>
        Assert.Equal(0.03, DiscountFactors.Real(1.03 * 1.025 - 1, 0.025), 1e-12); // 1+d = (1+d_real)(1+i)

    [Fact]
    public void of_a_loan_is_repaid_by_the_sum_of_its_principal_parts()
    {
        var loan = new Loan(Money.FromUnits(10_000));
        Assert.Equal(-10_000, Enumerable.Range(1, 36).Sum(p => LevelPayments.PrincipalPart(0.005, p, 36, loan).Units), 1e-6);
    }

    [Fact]
    public void of_a_loan_without_interest_is_the_sum_of_its_payments()
    {
        Assert.Equal(-100, LevelPayments.Payment(0, 12, Money.FromUnits(1200)).Units, 1e-12);
        Assert.Equal(12, LevelPayments.Periods(0, Money.FromUnits(-100), Money.FromUnits(1200)), 1e-12);
    }
}
