using MathNet.Numerics.Distributions;
using MathNet.Numerics.Integration;
using RetrofitCalc.Engine.Lifetimes.Survival;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Tests.Lifetimes.Survival;

public class Life_by_Weibull
{
    private static readonly WeibullLife Lamp = new(Hours(30_000), 6);

    [Fact]
    public void halves_the_parts_at_the_rated_life() => Assert.Equal(0.5, Lamp.Surviving(Lamp.Median), 1e-15);

    [Fact]
    public void keeps_all_of_them_when_new() => Assert.Equal(1, Lamp.Surviving(OperatingTime.Zero));

    [Theory] // 2^(−(share)^6) by hand: 0.7^6 = 0.117649, 0.8^6 = 0.262144, 1.2^6 = 2.985984
    [InlineData(0.7, 0.92169)]
    [InlineData(0.8, 0.83385)]
    [InlineData(1.2, 0.12622)]
    public void leaves_a_share_by_the_power_of_the_hours(double share, double left) =>
        Assert.Equal(left, Lamp.Surviving(Lamp.Median * share), 5e-6);

    [Theory] // MathNet.Numerics, Weibull with scale L/(ln 2)^(1/β); its distribution function is good to about 1e-8 where few have failed
    [InlineData(0.8)]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(6)]
    [InlineData(12)]
    public void agrees_with_a_general_purpose_library(double shape)
    {
        var life = new WeibullLife(Hours(20_000), shape);
        var library = new Weibull(shape, 20_000 / Math.Pow(Math.Log(2), 1 / shape));
        Assert.Equal(library.Mean, life.Mean.Hours, library.Mean * 1e-12);
        Assert.All([500.0, 9_000, 20_000, 31_000], hours =>
        {
            Assert.Equal(library.CumulativeDistribution(hours), life.Failed(Hours(hours)), 2e-8);
            Assert.Equal(library.Density(hours), life.FailureRate(Hours(hours)) * life.Surviving(Hours(hours)), 1e-15);
        });
    }

    [Fact]
    public void has_as_its_mean_the_area_under_the_survivors()
    {
        var area = GaussKronrodRule.Integrate(hours => Lamp.Surviving(Hours(hours)), 0, 60_000, out _, out _, 1e-10);
        Assert.Equal(area, Lamp.Mean.Hours, 1e-3);
    }

    [Fact]
    public void forgets_its_age_when_failures_come_by_chance()
    {
        var chance = new WeibullLife(Hours(10_000), 1);
        Assert.Equal(0.5, chance.SurvivingFurther(Hours(77_000), Hours(10_000)), 1e-12);
    }

    [Fact]
    public void gives_used_parts_less_time_than_new_ones()
    {
        Assert.Equal(Lamp.Surviving(Hours(31_000)) / Lamp.Surviving(Hours(25_000)), Lamp.SurvivingFurther(Hours(25_000), Hours(6_000)), 1e-14);
        Assert.True(Lamp.SurvivingFurther(Hours(25_000), Hours(6_000)) < Lamp.Surviving(Hours(6_000)));
    }

    [Fact]
    public void still_counts_parts_far_beyond_their_life() =>
        Assert.InRange(Lamp.SurvivingFurther(Hours(120_000), Hours(1)), 0.85, 0.87); // rate 6 · ln 2 · 4^5 / 30,000 = 0.142 an hour

    [Theory]
    [InlineData(0.9, 0)]
    [InlineData(0.5, 12_000)]
    [InlineData(0.01, 40_000)]
    public void says_when_a_share_is_left(double share, double burned) =>
        Assert.Equal(share, Lamp.SurvivingFurther(Hours(burned), Lamp.Until(share, Hours(burned))), 1e-10);

    [Theory]
    [InlineData(0, 6)]
    [InlineData(1_000, 0.4)]
    [InlineData(1_000, 31)]
    [InlineData(1_000, double.NaN)]
    public void refuses_what_is_no_life(double median, double shape) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new WeibullLife(Hours(median), shape));

    private static OperatingTime Hours(double hours) => OperatingTime.FromHours(hours);
}
