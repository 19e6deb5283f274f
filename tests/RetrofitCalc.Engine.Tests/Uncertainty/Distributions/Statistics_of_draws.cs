using MathNet.Numerics.Statistics;
using RetrofitCalc.Engine.Uncertainty.Distributions;

namespace RetrofitCalc.Engine.Tests.Uncertainty.Distributions;

public class Statistics_of_draws
{
    [Fact] // 1 to 11: eleven values, ten gaps, a tenth of them is one gap
    public void read_percentiles_from_the_order_of_the_values()
    {
        var statistics = SampleStatistics.Of([11, 3, 5, 1, 7, 9, 2, 4, 6, 8, 10]);
        Assert.Equal((2, 6, 10), (statistics.P10, statistics.P50, statistics.P90));
        Assert.Equal((1, 11), (statistics.Percentile(0), statistics.Percentile(1)));
    }

    [Fact] // spreadsheet: PERCENTILE(1, 2, 3, 4; 0.3) = 1.9
    public void read_between_two_values_by_a_straight_line() => Assert.Equal(1.9, SampleStatistics.Of([4, 1, 3, 2]).Percentile(0.3), 1e-15);

    [Fact]
    public void agree_with_a_general_purpose_library()
    {
        double[] values = [.. Enumerable.Range(0, 997).Select(i => new RandomStream(4).At(i, 0))];
        var statistics = SampleStatistics.Of(values);
        Assert.All([0.05, 0.1, 0.5, 0.77, 0.9], share =>
            Assert.Equal(values.QuantileCustom(share, QuantileDefinition.R7), statistics.Percentile(share), 1e-12));
        Assert.Equal(values.Mean(), statistics.Mean, 1e-12);
        Assert.Equal(values.StandardDeviation(), statistics.StandardDeviation, 1e-12);
    }

    [Fact] // 2, 4, 4, 4, 5, 5, 7, 9: mean 5, squares 32, s = √(32/7), s/√8
    public void give_the_standard_error_of_the_mean()
    {
        var statistics = SampleStatistics.Of([2, 4, 4, 4, 5, 5, 7, 9]);
        Assert.Equal(5, statistics.Mean);
        Assert.Equal(Math.Sqrt(32.0 / 7 / 8), statistics.StandardError, 1e-15);
    }

    [Fact]
    public void count_the_draws_within_a_limit()
    {
        var statistics = SampleStatistics.Of([1, 2, 2, 3, double.PositiveInfinity]);
        Assert.Equal(0.6, statistics.AtMost(2).Share, 1e-15);
        Assert.Equal(0.4, statistics.Above(2).Share, 1e-15);
        Assert.Equal(0, statistics.AtMost(0.9).Share);
        Assert.Equal(Math.Sqrt(0.6 * 0.4 / 5), statistics.AtMost(2).StandardError, 1e-15);
    }

    [Fact]
    public void say_never_where_never_is_touched()
    {
        var statistics = SampleStatistics.Of([2, 3, 4, double.PositiveInfinity, double.PositiveInfinity]);
        Assert.Equal(4, statistics.P50);
        Assert.Equal(double.PositiveInfinity, statistics.Percentile(0.6));
        Assert.Equal(double.PositiveInfinity, statistics.P90);
        Assert.Equal(double.PositiveInfinity, statistics.Mean);
    }

    [Fact]
    public void need_two_values_that_are_numbers()
    {
        Assert.Throws<ArgumentException>(() => SampleStatistics.Of([1]));
        Assert.Throws<ArgumentException>(() => SampleStatistics.Of([1, double.NaN]));
    }

    [Fact] // y = 3a + 2b − c, a and b correlated by 0.5: mean and variance by hand
    public void meet_the_exact_result_of_a_linear_case_within_their_standard_error()
    {
        var group = new InputGroup(1, 0.5);
        var sample = new JointSample([new(1, new NormalDistribution(10, 2), group), new(2, new NormalDistribution(5, 1), group), new(3, new TriangularDistribution(0, 3, 6))], 20_261);
        var statistics = SampleStatistics.Of([.. Enumerable.Range(0, 10_000).Select(i => sample.Draw(i)).Select(v => 3 * v[0] + 2 * v[1] - v[2])]);
        var variance = 9 * 4 + 4 * 1 + 2 * 3 * 2 * 0.5 * 2 * 1 + 36 / 24.0; // 36 + 4 + 12 + 1.5
        Assert.Equal(30 + 10 - 3, statistics.Mean, 3 * statistics.StandardError);
        Assert.Equal(Math.Sqrt(variance), statistics.StandardDeviation, 3 * Math.Sqrt(variance / 20_000));
    }

    [Fact] // of 400 seeds, how often 500 draws hold the true median and P90 between their bounds: 95 %, within four standard errors
    public void hold_the_true_percentile_between_their_bounds_as_often_as_said()
    {
        var input = new LognormalDistribution(3, 0.5);
        Assert.All([0.5, 0.9], share => Assert.InRange(Enumerable.Range(0, 400).Count(seed => Holds(seed, share, input)) / 400.0, 0.95 - 0.044, 0.95 + 0.044));
    }

    [Fact] // of new draws, four in five lie between P10 and P90 of 10,000: within four standard errors of both samples
    public void hold_four_in_five_of_new_draws_in_their_band()
    {
        var sample = new JointSample([new(1, new PertDistribution(0, 2, 9)), new(2, new UniformDistribution(1, 4))], 20_261);
        double Draw(int i) { var values = sample.Draw(i); return values[0] / values[1]; }
        var statistics = SampleStatistics.Of([.. Enumerable.Range(0, 10_000).Select(Draw)]);
        var within = Enumerable.Range(10_000, 10_000).Select(Draw).Count(value => value >= statistics.P10 && value <= statistics.P90);
        Assert.InRange(within / 10_000.0, 0.8 - 0.023, 0.8 + 0.023);
    }

    private static bool Holds(int seed, double share, LognormalDistribution input)
    {
        var sample = new JointSample([new(1, input)], seed);
        var (low, high) = SampleStatistics.Of([.. Enumerable.Range(0, 500).Select(i => sample.Draw(i)[0])]).Between(share);
        return low <= input.Quantile(share) && input.Quantile(share) <= high;
    }
}
