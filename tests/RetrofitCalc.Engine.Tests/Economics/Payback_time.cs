using CsCheck;
using RetrofitCalc.Engine.Economics;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Engine.Tests.Economics;

public class Payback_time
{
    [Fact] // 1000 spent, 400 a year: 800 back after two years, 200 of the third year's 400 is half of it
    public void is_spread_over_the_year_of_recovery() => Assert.Equal(new Payback(2.5), Of(-1000, 400, 400, 400, 400));

    [Fact]
    public void is_whole_years_when_the_sum_meets_exactly() => Assert.Equal(new Payback(2), Of(-800, 400, 400));

    [Fact]
    public void is_never_when_the_sum_stays_below() => Assert.Equal(new Payback(null), Of(-1000, 100, 100));

    [Fact]
    public void is_zero_when_nothing_is_spent() => Assert.Equal(new Payback(0), Of(0, 0, 0));

    [Fact]
    public void says_when_a_later_replacement_loses_it_again() => Assert.Equal(new Payback(2, LostAgain: true), Of(-200, 100, 100, -50, 100));

    [Fact]
    public void without_replacements_is_first_cost_over_saving() => Assert.Equal(2.5, PaybackTime.Plain(Money.FromUnits(1000), Money.FromUnits(400), 10).Years);

    [Theory, InlineData(1000, 0), InlineData(1000, -5), InlineData(1000, 99)]
    public void without_replacements_is_never_beyond_the_study(double cost, double saving) =>
        Assert.Null(PaybackTime.Plain(Money.FromUnits(cost), Money.FromUnits(saving), 10).Years);

    [Fact]
    public void lies_within_the_year_of_recovery() =>
        Gen.Select(Gen.Double[1, 1000], Gen.Double[-50, 200].Array[1, 30]).Sample((cost, later) =>
        {
            double[] flows = [-cost, .. later];
            if (Of(flows).Years is not { } years) return flows.Scan().All(sum => sum < 1e-9);
            var year = (int)Math.Ceiling(years - 1e-12);
            return flows.Scan().ElementAt(year - 1) < 1e-9 && flows.Scan().ElementAt(year) >= -1e-9;
        });

    [Fact]
    public void turned_over_meets_never_without_a_jump()
    {
        var justPaid = PaybackTime.RecoveredShare(Flows(-1000, 500, 500))!.Value;
        var justNot = PaybackTime.RecoveredShare(Flows(-1000, 500, 499.999))!.Value;
        Assert.Equal(0.5, justPaid, 1e-9);
        Assert.Equal(justPaid, justNot, 1e-6);
    }

    private static Payback Of(params double[] flows) => PaybackTime.Of(Flows(flows));

    private static List<Money> Flows(params double[] flows) => [.. flows.Select(Money.FromUnits)];
}

internal static class Sums
{
    public static IEnumerable<double> Scan(this IEnumerable<double> flows)
    {
        var sum = 0.0;
        foreach (var flow in flows) yield return sum += flow;
    }
}
