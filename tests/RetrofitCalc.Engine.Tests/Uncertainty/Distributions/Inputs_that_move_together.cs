using MathNet.Numerics.Statistics;
using RetrofitCalc.Engine.Uncertainty.Distributions;

namespace RetrofitCalc.Engine.Tests.Uncertainty.Distributions;

public class Inputs_that_move_together
{
    private const int Draws = 20_000;

    private static readonly NormalDistribution Unit = new(0, 1);

    [Fact]
    public void stand_at_the_same_rank_when_they_move_all_at_once()
    {
        var tariffs = new InputGroup(1, 1);
        var sample = new JointSample([new(1, new UniformDistribution(0, 1), tariffs), new(2, new UniformDistribution(10, 20), tariffs)], 5);
        Assert.All(Enumerable.Range(0, 200).Select(i => sample.Draw(i)), values => Assert.Equal(10 + 10 * values[0], values[1], 1e-12));
    }

    [Theory] // normal scores: the correlation itself. Within 4/√n
    [InlineData(0)]
    [InlineData(0.5)]
    [InlineData(0.9)]
    public void have_the_correlation_of_their_group(double correlation)
    {
        var group = new InputGroup(1, correlation);
        var columns = Columns(new([new(1, Unit, group), new(2, Unit, group)], 20_261));
        Assert.Equal(correlation, Correlation.Pearson(columns[0], columns[1]), 4 / Math.Sqrt(Draws));
    }

    [Fact] // ranks: 6/π · asin(0.5/2) = 0.4826, whatever the distributions
    public void have_a_slightly_lower_correlation_of_ranks()
    {
        var lives = new InputGroup(2, 0.5);
        var columns = Columns(new([new(1, new PertDistribution(0, 1, 9), lives), new(2, new LognormalDistribution(3, 1), lives)], 20_261));
        Assert.Equal(6 / Math.PI * Math.Asin(0.25), Correlation.Spearman(columns[0], columns[1]), 4 / Math.Sqrt(Draws));
    }

    [Theory] // Kolmogorov and Smirnov: one in a thousand above 1.95/√n
    [InlineData(0)]
    [InlineData(0.6)]
    [InlineData(1)]
    public void keep_each_its_own_distribution(double correlation)
    {
        var group = new InputGroup(1, correlation);
        var even = Columns(new([new(1, new UniformDistribution(0, 1), group), new(2, Unit, group)], 3))[0].Order().ToArray();
        Assert.InRange(even.Select((value, i) => Math.Abs(value - (i + 0.5) / Draws)).Max(), 0, 1.95 / Math.Sqrt(Draws));
    }

    [Fact]
    public void leave_other_groups_and_single_inputs_alone()
    {
        var columns = Columns(new([new(1, Unit, new InputGroup(1, 0.9)), new(2, Unit, new InputGroup(2, 0.9)), new(3, Unit)], 20_261));
        Assert.All([(0, 1), (0, 2), (1, 2)], pair =>
            Assert.Equal(0, Correlation.Pearson(columns[pair.Item1], columns[pair.Item2]), 4 / Math.Sqrt(Draws)));
    }

    [Fact]
    public void do_not_change_when_another_input_is_added_before_them()
    {
        var few = new JointSample([new(2, Unit)], 9).Draw(77)[0];
        Assert.Equal(few, new JointSample([new(1, Unit), new(2, Unit)], 9).Draw(77)[1]);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    public void are_drawn_alike_on_any_number_of_cores(int cores)
    {
        var group = new InputGroup(1, 0.7);
        var sample = new JointSample([new(1, new PertDistribution(0, 1, 2), group), new(2, Unit, group)], 20_261);
        var sums = new double[2_000];
        Parallel.For(0, sums.Length, new ParallelOptions { MaxDegreeOfParallelism = cores }, i => sums[i] = sample.Draw(i).Sum());
        Assert.Equal(Enumerable.Range(0, sums.Length).Select(i => sample.Draw(i).Sum()), sums);
    }

    [Fact]
    public void need_numbers_of_their_own()
    {
        Assert.Throws<ArgumentException>(() => new JointSample([new(1, Unit), new(1, Unit)], 1));
        Assert.Throws<ArgumentException>(() => new JointSample([new(1, Unit, new InputGroup(1, 0.5)), new(2, Unit, new InputGroup(1, 0.6))], 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => new JointSample([new(1, Unit, new InputGroup(1, 1.5))], 1));
    }

    private static double[][] Columns(JointSample sample)
    {
        var rows = Enumerable.Range(0, Draws).Select(i => sample.Draw(i)).ToList();
        return [.. Enumerable.Range(0, rows[0].Length).Select(column => rows.Select(row => row[column]).ToArray())];
    }
}
