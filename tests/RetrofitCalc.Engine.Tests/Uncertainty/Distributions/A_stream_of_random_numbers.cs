using MathNet.Numerics.Distributions;
using MathNet.Numerics.Statistics;
using RetrofitCalc.Engine.Uncertainty.Distributions;

namespace RetrofitCalc.Engine.Tests.Uncertainty.Distributions;

public class A_stream_of_random_numbers
{
    private const int Draws = 100_000;

    private static readonly RandomStream Stream = new(20_261);

    [Theory] // known answers published with Random123 (kat_vectors, philox4x32 10)
    [InlineData(0x00000000, 0x00000000, 0x00000000, 0x00000000, 0x00000000, 0x00000000, "6627e8d5 e169c58d bc57ac4c 9b00dbd8")]
    [InlineData(0xffffffff, 0xffffffff, 0xffffffff, 0xffffffff, 0xffffffff, 0xffffffff, "408f276d 41c83b0e a20bc7c6 6d5451fd")]
    [InlineData(0x243f6a88, 0x85a308d3, 0x13198a2e, 0x03707344, 0xa4093822, 0x299f31d0, "d16cfe09 94fdcceb 5001e420 24126ea1")]
    public void gives_the_published_answers(uint a, uint b, uint c, uint d, uint first, uint second, string answer)
    {
        var block = Philox.Block(new(a, b, c, d), first, second);
        Assert.Equal(answer, $"{block.A:x8} {block.B:x8} {block.C:x8} {block.D:x8}");
    }

    [Fact]
    public void has_no_order()
    {
        var forwards = Enumerable.Range(0, 1_000).Select(i => Stream.At(i, 3)).ToArray();
        var backwards = Enumerable.Range(0, 1_000).Reverse().Select(i => new RandomStream(20_261).At(i, 3)).Reverse().ToArray();
        Assert.Equal(forwards, backwards);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(5)]
    public void is_the_same_on_any_number_of_cores(int cores)
    {
        var values = new double[10_000];
        Parallel.For(0, values.Length, new ParallelOptions { MaxDegreeOfParallelism = cores }, i => values[i] = Stream.At(i, 7));
        Assert.Equal(Enumerable.Range(0, values.Length).Select(i => Stream.At(i, 7)), values);
    }

    [Fact] // 100 cells of 1,000: χ² with 99 degrees of freedom, one in a thousand above 148.2
    public void is_even()
    {
        var cells = new int[100];
        for (var i = 0; i < Draws; i++) cells[(int)(100 * Stream.At(i, 1))]++;
        Assert.InRange(cells.Sum(n => (n - 1_000.0) * (n - 1_000.0) / 1_000), 0, ChiSquared.InvCDF(99, 0.999));
    }

    [Theory] // correlation of independent numbers: within 4/√n
    [InlineData(1, 2)]
    [InlineData(1, 65_537)]
    [InlineData(-1, 1)]
    public void is_unrelated_between_inputs(int one, int other)
    {
        var (first, second) = (Enumerable.Range(0, Draws).Select(i => Stream.At(i, one)), Enumerable.Range(0, Draws).Select(i => Stream.At(i, other)));
        Assert.InRange(Correlation.Pearson(first, second), -4 / Math.Sqrt(Draws), 4 / Math.Sqrt(Draws));
    }

    [Fact]
    public void is_unrelated_from_draw_to_draw_and_from_seed_to_seed()
    {
        double[] values = [.. Enumerable.Range(0, Draws).Select(i => Stream.At(i, 1))];
        double[] others = [.. Enumerable.Range(0, Draws).Select(i => new RandomStream(20_262).At(i, 1))];
        Assert.InRange(Correlation.Pearson(values[..^1], values[1..]), -4 / Math.Sqrt(Draws), 4 / Math.Sqrt(Draws));
        Assert.InRange(Correlation.Pearson(values, others), -4 / Math.Sqrt(Draws), 4 / Math.Sqrt(Draws));
    }

    [Fact]
    public void keeps_off_its_ends_and_goes_on_beyond_four_billion_draws()
    {
        Assert.All(Enumerable.Range(0, Draws), i => Assert.InRange(Stream.At(i, 2), double.Epsilon, 1 - 1e-17));
        Assert.NotEqual(Stream.At(5, 0), Stream.At((1L << 32) + 5, 0));
    }
}
