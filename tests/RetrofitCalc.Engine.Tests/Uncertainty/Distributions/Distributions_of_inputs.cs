using MathNet.Numerics.Distributions;
using RetrofitCalc.Engine.Uncertainty.Distributions;

namespace RetrofitCalc.Engine.Tests.Uncertainty.Distributions;

public class Distributions_of_inputs
{
    private static readonly double[] Chances = [1e-9, 0.001, 0.1, 0.25, 0.5, 0.75, 0.9, 0.999, 1 - 1e-9];

    public static TheoryData<string, InputDistribution> All => new()
    {
        { "triangular", new TriangularDistribution(0.8, 1, 1.5) },
        { "triangular, likely at the low end", new TriangularDistribution(2, 2, 5) },
        { "triangular, likely at the high end", new TriangularDistribution(-1, 3, 3) },
        { "PERT", new PertDistribution(0.8, 1, 1.5) },
        { "normal", new NormalDistribution(1, 0.1) },
        { "lognormal", new LognormalDistribution(30_000, 0.25) },
        { "uniform", new UniformDistribution(-2, 7) },
        { "discrete", new DiscreteDistribution([new(1.3, 1), new(0.9, 3), new(1, 6)]) },
    };

    [Theory, MemberData(nameof(All))] // mean and deviation as sums over 200,000 quantiles evenly apart
    public void have_the_mean_and_deviation_of_their_quantiles(string name, InputDistribution input)
    {
        Assert.NotEmpty(name);
        var values = Enumerable.Range(0, 200_000).Select(i => input.Quantile((i + 0.5) / 200_000)).ToList();
        var mean = values.Average();
        Assert.Equal(input.Mean, mean, 1e-4 * input.StandardDeviation);
        Assert.Equal(input.StandardDeviation, Math.Sqrt(values.Average(v => (v - mean) * (v - mean))), 1e-3 * input.StandardDeviation);
    }

    [Theory, MemberData(nameof(All))]
    public void rise_with_the_chance(string name, InputDistribution input)
    {
        Assert.NotEmpty(name);
        Assert.All(Chances.Zip(Chances.Skip(1)), pair => Assert.True(input.Quantile(pair.First) <= input.Quantile(pair.Second)));
    }

    [Fact]
    public void agree_with_a_general_purpose_library() => Assert.All(Chances, chance =>
    {
        Assert.Equal(Triangular.InvCDF(0.8, 1.5, 1, chance), new TriangularDistribution(0.8, 1, 1.5).Quantile(chance), 1e-12);
        Assert.Equal(Normal.InvCDF(1, 0.1, chance), new NormalDistribution(1, 0.1).Quantile(chance), 1e-12);
        Assert.Equal(LogNormal.InvCDF(Math.Log(30_000), 0.25, chance), new LognormalDistribution(30_000, 0.25).Quantile(chance), 1e-6);
        Assert.Equal(ContinuousUniform.InvCDF(-2, 7, chance), new UniformDistribution(-2, 7).Quantile(chance), 1e-12);
    });

    [Theory] // tables of the normal distribution
    [InlineData(0.9, 1.2815515655446004)]
    [InlineData(0.975, 1.959963984540054)]
    [InlineData(0.025, -1.959963984540054)]
    [InlineData(0.5, 0)]
    public void give_the_known_quantiles_of_the_normal(double chance, double z) => Assert.Equal(z, new NormalDistribution(0, 1).Quantile(chance), 1e-14);

    [Fact] // triangle 0, 1, 2: half of p is half of x² below 1, so P10 = √0.2 and P90 = 2 − √0.2
    public void give_the_quantiles_of_a_triangle_by_hand()
    {
        var triangle = new TriangularDistribution(0, 1, 2);
        Assert.Equal(Math.Sqrt(0.2), triangle.Quantile(0.1), 1e-15);
        Assert.Equal(2 - Math.Sqrt(0.2), triangle.Quantile(0.9), 1e-15);
        Assert.Equal(1, triangle.Quantile(0.5), 1e-15);
    }

    [Theory] // likely in the middle: β(3, 3), whose chance is x³ · (10 − 15x + 6x²); likely at low: β(1, 5), x = 1 − (1 − p)^(1/5)
    [InlineData(0.01)]
    [InlineData(0.3)]
    [InlineData(0.95)]
    public void give_the_quantiles_of_pert_in_closed_form(double chance)
    {
        var x = (new PertDistribution(10, 15, 20).Quantile(chance) - 10) / 10;
        Assert.Equal(chance, x * x * x * (10 - 15 * x + 6 * x * x), 1e-9);
        Assert.Equal(10 - 10 * Math.Pow(1 - chance, 0.2), new PertDistribution(0, 0, 10).Quantile(chance), 1e-8);
    }

    [Fact] // (0.8 + 4 · 1 + 1.5) / 6
    public void weigh_the_likely_value_four_times_in_pert() => Assert.Equal(1.05, new PertDistribution(0.8, 1, 1.5).Mean, 1e-15);

    [Fact]
    public void meet_the_ends_of_a_range_at_p10_and_p90()
    {
        Assert.Equal(0.9, NormalDistribution.OfRange(0.9, 1.2).Quantile(0.1), 1e-12);
        Assert.Equal(1.2, NormalDistribution.OfRange(0.9, 1.2).Quantile(0.9), 1e-12);
        Assert.Equal(15_000, LognormalDistribution.OfRange(15_000, 60_000).Quantile(0.1), 1e-8);
        Assert.Equal(30_000, LognormalDistribution.OfRange(15_000, 60_000).Median, 1e-9);
        Assert.Equal(60_000, LognormalDistribution.OfRange(15_000, 60_000).Quantile(0.9), 1e-8);
    }

    [Theory] // 3 in 10 at 0.9, then 6 in 10 at 1, then 1.3
    [InlineData(0.3, 0.9)]
    [InlineData(0.3001, 1)]
    [InlineData(0.9, 1)]
    [InlineData(0.9001, 1.3)]
    public void step_from_value_to_value_when_discrete(double chance, double value) =>
        Assert.Equal(value, new DiscreteDistribution([new(1.3, 1), new(0.9, 3), new(1, 6)]).Quantile(chance));

    [Fact]
    public void never_give_a_value_of_no_weight()
    {
        var input = new DiscreteDistribution([new(0, 0), new(1, 2), new(9, 0)]);
        Assert.All(Chances, chance => Assert.Equal(1, input.Quantile(chance)));
    }

    [Fact]
    public void are_certain_when_the_range_has_no_width() => Assert.All(
        new InputDistribution[] { new TriangularDistribution(3, 3, 3), new PertDistribution(3, 3, 3), new UniformDistribution(3, 3), new NormalDistribution(3, 0), new LognormalDistribution(3, 0) },
        input =>
        {
            Assert.Equal(3, input.Quantile(0.01), 1e-15);
            Assert.Equal(0, input.StandardDeviation);
        });

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(double.NaN)]
    public void are_not_asked_for_a_certainty(double chance) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new NormalDistribution(0, 1).Quantile(chance));

    [Fact]
    public void are_the_same_with_the_same_values() =>
        Assert.Equal(new DiscreteDistribution([new(1, 2), new(0, 1)]), new DiscreteDistribution([new(0, 1), new(1, 2)]));
}
