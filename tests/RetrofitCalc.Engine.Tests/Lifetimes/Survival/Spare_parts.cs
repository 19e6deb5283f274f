using MathNet.Numerics.Distributions;
using RetrofitCalc.Engine.Lifetimes.Survival;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Tests.Lifetimes.Survival;

public class Spare_parts
{
    [Theory] // Poisson of mean 2: 0.1353, 0.4060, 0.6767, 0.8571, 0.9473, 0.9834 (e^−2 · Σ 2^k/k!, by hand)
    [InlineData(0.67, 2)]
    [InlineData(0.90, 4)]
    [InlineData(0.95, 5)]
    public void are_the_fewest_that_suffice_with_the_certainty_asked_for(double level, int spares) => Assert.Equal(spares, SpareParts.For(2, level));

    [Theory]
    [InlineData(0.02, 0.95)]
    [InlineData(7.5, 0.99)]
    [InlineData(940, 0.5)]
    [InlineData(1_000, 0.999)]
    public void suffice_while_one_fewer_does_not(double expected, double level)
    {
        var spares = SpareParts.For(expected, level);
        Assert.True(Poisson.CDF(expected, spares) >= level);
        Assert.True(spares == 0 || Poisson.CDF(expected, spares - 1) < level);
    }

    [Theory] // z² / 6 parts, the skew of the Poisson distribution, is what the normal one leaves out
    [InlineData(1_001, 0.95)]
    [InlineData(20_000, 0.99)]
    public void of_many_failures_are_normal_within_two_parts(double expected, double level)
    {
        var spares = SpareParts.For(expected, level);
        Assert.True(Poisson.CDF(expected, spares + 2) >= level && Poisson.CDF(expected, spares - 2) < level);
    }

    [Fact]
    public void are_none_where_nothing_fails() => Assert.Equal(0, SpareParts.For(0, 0.99));

    [Fact] // 60 lamps of mixed ages, 2,000 h until the delivery, played 4,000 times with a stated seed
    public void suffice_as_often_as_promised_when_lamps_are_followed()
    {
        var (life, ages, hours) = (new WeibullLife(OperatingTime.FromHours(20_000), 6), new double[60], OperatingTime.FromHours(2_000));
        for (var i = 0; i < ages.Length; i++) ages[i] = 300 * i;
        var mix = AgeMix.Of([.. ages.Select(age => (1.0, OperatingTime.FromHours(age)))]);
        var spares = SpareParts.For(60 * RenewalFunction.For(life, hours).Failures(life, mix, hours).Value, 0.95);
        var random = new Random(20_261);
        var enough = Enumerable.Range(0, 4_000).Count(_ =>
            ages.Sum(age => LampsFollowed.CountInPlace(life, OperatingTime.FromHours(age), hours, random)) <= spares);
        Assert.True(enough / 4_000.0 >= 0.95, $"{enough} of 4,000");
    }

    [Theory]
    [InlineData(-1, 0.9)]
    [InlineData(5, 0.4)]
    [InlineData(5, 1)]
    public void cannot_be_promised_for_certain(double expected, double level) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => SpareParts.For(expected, level));
}
