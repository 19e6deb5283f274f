using CsCheck;
using RetrofitCalc.Engine.Economics;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Tests.Economics;

public class Internal_rates_of_return
{
    [Fact]
    public void are_none_when_money_only_flows_one_way()
    {
        Assert.Empty(Of(-100, -10, -10));
        Assert.Empty(Of(100, 10, 10));
        Assert.Empty(Of(0, 0, 0));
    }

    [Fact]
    public void are_none_when_the_value_never_reaches_zero() => Assert.Empty(Of(100, -200, 150)); // 100x² − 200x + 150 has no real root

    [Fact] // −1000 + 2500x − 1540x²: x = 1/1.1 and x = 1/1.4, so the flows are −1000, +2500, −1540
    public void are_several_when_the_flows_change_sign_twice() => Near([0.1, 0.4], Of(-1000, 2500, -1540));

    [Fact] // (1+r)³ − 6.6… built from rates 0 %, 20 % and 50 %: (z − 1)(z − 1.2)(z − 1.5) = z³ − 3.7z² + 4.5z − 1.8
    public void are_all_found() => Near([0, 0.2, 0.5], Of(-1000, 3700, -4500, 1800));

    [Fact] // −100z² + 220z − 121 = −100(z − 1.1)²
    public void are_found_where_the_value_touches_zero_without_crossing() => Near([0.1], Of(-100, 220, -121), tolerance: 1e-6);

    [Fact]
    public void may_lie_far_below_zero() => Near([-0.9], Of(-100, 10));

    [Fact] // what rounding leaves of a zero is no change of sign
    public void are_not_misled_by_noise() => Near([0.1], Of(-100, 110, -1e-12, 1e-12));

    [Fact]
    public void do_not_mind_idle_years_before_the_first_flow() => Near([0.1], Of(0, 0, -100, 110));

    [Fact]
    public void each_make_the_net_present_value_zero() =>
        Gen.Int[-100_000, 100_000].Array[2, 25].Sample(cents =>
        {
            Money[] money = [.. cents.Select(amount => Money.FromUnits(amount / 100.0))];
            Assert.All(RateOfReturn.All(money), rate =>
            {
                var size = money.Select((flow, year) => Math.Abs(flow.Units) * DiscountFactors.Single(rate, year)).Sum();
                Assert.Equal(0, PresentValue.Of(rate, money).Units / size, 1e-6);
            });
        }, iter: 2000);

    [Fact] // flows made from the rates: the product of (z − 1 − r), z = 1 + rate; rates at least 8 % apart
    public void are_found_however_many_there_are() =>
        Gen.Int[0, 12].HashSet[1, 6].Select(steps => steps.Order().Select(step => -0.3 + 0.08 * step).ToArray()).Sample(rates =>
        {
            var flows = rates.Aggregate(new[] { 1000.0 }, (product, rate) =>
                [.. product.Append(0).Zip(product.Prepend(0), (same, shifted) => same - shifted * (1 + rate))]);
            Near(rates, Of(flows), tolerance: 1e-5);
        }, iter: 500);

    [Fact]
    public void are_exactly_one_for_money_spent_and_then_returned() =>
        Gen.Select(Gen.Double[1, 10_000], Gen.Double[0.01, 1000].Array[1, 40]).Sample((cost, later) =>
            Of([-cost, .. later]).Count == 1, iter: 300);

    [Fact]
    public void of_dated_flows_are_left_open_when_signs_change_twice() =>
        Assert.Null(RateOfReturn.OfDated([new(new(2026, 1, 1), Money.FromUnits(-1)), new(new(2027, 1, 1), Money.FromUnits(3)), new(new(2028, 1, 1), Money.FromUnits(-2))]));

    [Fact]
    public void modified_need_both_payments_and_receipts() => Assert.Null(RateOfReturn.Modified([Money.FromUnits(-1), Money.FromUnits(-1)], 0.1, 0.1));

    private static IReadOnlyList<double> Of(params double[] flows) => RateOfReturn.All([.. flows.Select(Money.FromUnits)]);

    private static void Near(double[] expected, IReadOnlyList<double> rates, double tolerance = 1e-9)
    {
        Assert.Equal(expected.Length, rates.Count);
        Assert.All(expected.Zip(rates), pair => Assert.Equal(pair.First, pair.Second, tolerance));
    }
}
