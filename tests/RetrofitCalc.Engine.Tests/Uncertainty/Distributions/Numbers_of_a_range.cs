using RetrofitCalc.Engine.Uncertainty.Distributions;

namespace RetrofitCalc.Engine.Tests.Uncertainty.Distributions;

public class Numbers_of_a_range
{
    [Theory]
    [InlineData(2, 1, 3, "Likely")]
    [InlineData(2, 4, 3, "Likely")]
    [InlineData(3, 3, 2, "Low")]
    [InlineData(double.NaN, 1, 2, "numbers")]
    [InlineData(0, 1, double.PositiveInfinity, "numbers")]
    public void out_of_order_are_named_and_refused_in_the_same_words(double low, double likely, double high, string word)
    {
        var problem = TriangularDistribution.Problem(low, likely, high);
        Assert.Contains(word, problem);
        Assert.Equal(problem, PertDistribution.Problem(low, likely, high));
        Assert.Equal(problem, Assert.Throws<ArgumentException>(() => new TriangularDistribution(low, likely, high)).Message);
        Assert.Equal(problem, Assert.Throws<ArgumentException>(() => new PertDistribution(low, likely, high)).Message);
    }

    [Fact]
    public void in_order_have_no_problem()
    {
        Assert.Null(TriangularDistribution.Problem(1, 1, 2));
        Assert.Null(UniformDistribution.Problem(1, 1));
        Assert.Null(NormalDistribution.Problem(-5, 0));
        Assert.Null(LognormalDistribution.Problem(0.1, 0));
        Assert.Null(DiscreteDistribution.Problem([new(1, 1)]));
    }

    [Fact]
    public void must_make_sense_for_their_kind()
    {
        Assert.Throws<ArgumentException>(() => new UniformDistribution(2, 1));
        Assert.Throws<ArgumentException>(() => new NormalDistribution(1, -0.1));
        Assert.Throws<ArgumentException>(() => new NormalDistribution(double.NaN, 1));
        Assert.Throws<ArgumentException>(() => NormalDistribution.OfRange(2, 1));
        Assert.Throws<ArgumentException>(() => new LognormalDistribution(0, 0.2));
        Assert.Throws<ArgumentException>(() => new LognormalDistribution(1, -0.2));
        Assert.Throws<ArgumentException>(() => LognormalDistribution.OfRange(0, 2));
    }

    [Fact]
    public void must_leave_something_to_choose_when_discrete()
    {
        Assert.Throws<ArgumentException>(() => new DiscreteDistribution([]));
        Assert.Throws<ArgumentException>(() => new DiscreteDistribution([new(1, 0)]));
        Assert.Throws<ArgumentException>(() => new DiscreteDistribution([new(1, -1), new(2, 2)]));
        Assert.Throws<ArgumentException>(() => new DiscreteDistribution([new(double.NaN, 1)]));
    }
}
