using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Reports.Tests;

public class A_printed_sum
{
    [Fact]
    public void is_the_sum_of_the_printed_lines_and_not_the_rounded_sum()
    {
        // 100.4 + 200.4 + 0.4 = 301.2; printed 100 + 200 + 0 = 300; less an incentive of 10.6, printed 11.
        var cost = new FirstCost(Money.FromUnits(100.4), Money.FromUnits(200.4), Money.FromUnits(0.4), Money.Zero, Money.Zero, Money.FromUnits(10.6));
        Assert.Equal(289, PrintedSums.Of(cost).Units);
    }
}
