using MathNet.Numerics;
using MathNet.Numerics.Integration;
using RetrofitCalc.Engine.Lifetimes.Survival;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Tests.Lifetimes.Survival;

/// <summary>The renewal equation against closed forms, other ways to the same number, and lamps followed one by one.</summary>
public class Expected_failures
{
    private static readonly WeibullLife Lamp = new(Hours(20_000), 6);

    [Theory] // by chance alone: failures are even, ln 2 for each median of hours
    [InlineData(0.3)]
    [InlineData(1.7)]
    [InlineData(4)]
    public void by_chance_alone_are_even(double medians)
    {
        var chance = new WeibullLife(Hours(10_000), 1);
        var count = RenewalFunction.Of(1, 4).Failures(chance, AgeMix.All(Hours(4_321)), chance.Median * medians);
        Assert.Equal(Math.Log(2) * medians, count.Value, 1e-6);
        Assert.InRange(Math.Log(2) * medians, count.Low, count.High);
    }

    [Fact] // M = F + F∗F while a third failure is out of reach: (1/3)^6 each
    public void are_first_failures_and_then_second_ones()
    {
        var second = GaussKronrodRule.Integrate(
            x => Lamp.Failed(Hours(20_000 - x)) * Lamp.FailureRate(Hours(x)) * Lamp.Surviving(Hours(x)), 0, 20_000, out _, out _, 1e-12);
        Assert.Equal(0.5 + second, New(1).Value, 1e-7);
    }

    [Theory] // long after the start M(t) = t/μ + (σ² − μ²)/(2μ²): Cox, Renewal Theory (1962), from memory
    [InlineData(2)]
    [InlineData(3)]
    public void settle_to_hours_over_mean_life(double shape)
    {
        var life = new WeibullLife(Hours(10_000), shape);
        var (mean, square) = (SpecialFunctions.Gamma(1 + 1 / shape), SpecialFunctions.Gamma(1 + 2 / shape));
        var limit = 80_000 / life.Mean.Hours + (square - 2 * mean * mean) / (2 * mean * mean);
        Assert.Equal(limit, RenewalFunction.Of(shape, 8).Failures(life, AgeMix.New, Hours(80_000)).Value, 5e-6);
    }

    [Theory]
    [InlineData(3_000)]
    [InlineData(21_000)]
    [InlineData(55_000)]
    public void are_even_from_settled_ages(double hours) =>
        Assert.Equal(hours / Lamp.Mean.Hours, RenewalFunction.Of(6, 3).Failures(Lamp, AgeMix.Settled(Lamp, 500), Hours(hours)).Value, 1e-4);

    [Fact]
    public void lie_between_their_bounds_and_near_with_the_square_of_the_step()
    {
        var exact = New(2.5, 4_000).Value;
        var (coarse, fine) = (New(2.5, 50), New(2.5, 100));
        Assert.InRange(exact, coarse.Low, coarse.High);
        Assert.InRange(exact, fine.Low, fine.High);
        Assert.Equal(4, (coarse.Value - exact) / (fine.Value - exact), 0.2);
        Assert.Equal(2, coarse.Bound / fine.Bound, 0.1);
    }

    [Fact]
    public void are_good_to_a_thousandth_by_default() => Assert.InRange(New(2.5).Bound / New(2.5).Value, 0, 1e-3);

    [Fact] // grid of 20 h: times on it and between
    public void do_not_jump_between_the_steps()
    {
        var renewals = RenewalFunction.Of(6, 2);
        double At(double hours) => renewals.Failures(Lamp, AgeMix.New, Hours(hours)).Value;
        Assert.Equal(At(22_000), At(22_000 - 1e-6), 1e-8);
        Assert.Equal(At(22_000), At(22_000 + 1e-6), 1e-8);
        Assert.Equal((At(22_004) + At(22_016)) / 2, At(22_010), 1e-6);
    }

    [Theory] // 100,000 lamps followed one by one, seed stated; within four standard errors
    [InlineData(6, 0, 12_000)]
    [InlineData(6, 17_000, 30_000)]
    [InlineData(3, 25_000, 45_000)]
    [InlineData(0.8, 10_000, 50_000)]
    public void agree_with_lamps_followed_one_by_one(double shape, double age, double hours)
    {
        var life = new WeibullLife(Hours(20_000), shape);
        var expected = RenewalFunction.For(life, Hours(hours)).Failures(life, AgeMix.All(Hours(age)), Hours(hours));
        var (mean, error) = LampsFollowed.Failures(life, Hours(age), Hours(hours), new Random(20_261));
        Assert.InRange(mean, expected.Value - 4 * error, expected.Value + 4 * error);
    }

    [Fact]
    public void start_at_none() => Assert.Equal(0, New(0).Value);

    [Fact]
    public void reach_far_with_coarser_steps()
    {
        var far = RenewalFunction.Of(3, 60);
        var life = new WeibullLife(Hours(1_000), 3);
        Assert.Equal(60, far.Reach, 0.01);
        Assert.Equal(60_000 / life.Mean.Hours, far.Failures(life, AgeMix.Settled(life), Hours(60_000)).Value, 1e-3);
    }

    [Fact]
    public void are_not_asked_of_another_shape() =>
        Assert.Throws<ArgumentException>(() => RenewalFunction.Of(3, 2).Failures(Lamp, AgeMix.New, Hours(10)));

    [Fact]
    public void are_not_asked_beyond_their_reach() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => RenewalFunction.Of(6, 1).Failures(Lamp, AgeMix.New, Hours(20_100)));

    private static ExpectedCount New(double medians, int steps = RenewalFunction.DefaultSteps) =>
        RenewalFunction.Of(6, Math.Max(0.1, medians), steps).Failures(Lamp, AgeMix.New, Lamp.Median * medians);

    private static OperatingTime Hours(double hours) => OperatingTime.FromHours(hours);
}
