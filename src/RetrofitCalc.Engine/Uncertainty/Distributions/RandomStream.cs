namespace RetrofitCalc.Engine.Uncertainty.Distributions;

/// <summary>Even random numbers that have no order: number i of input j follows from the seed alone.</summary>
/// <remarks>
/// E-92: the counter-based generator Philox 4×32 of ten rounds (S-94). Whoever asks first, on however many cores, gets the same, and
/// an input added later leaves the numbers of the others as they are.
/// </remarks>
public sealed class RandomStream
{
    private readonly uint _seed;

    /// <summary>The stream of a seed.</summary>
    /// <param name="seed">Seed of the study, printed on the summary.</param>
    public RandomStream(int seed) => _seed = unchecked((uint)seed);

    /// <summary>An even random number, ends left out.</summary>
    /// <param name="draw">Which draw. [count, 0 or more]</param>
    /// <param name="input">Which input, by a number of its own.</param>
    /// <returns>One of 2^52 values, even about ½. [unitless, above 0 and below 1]</returns>
    public double At(long draw, int input) => At(draw, input, 0);

    /// <summary>The same for what a group of inputs has in common; it shares no number with any input.</summary>
    internal double OfGroup(long draw, int group) => At(draw, group, 1);

    private double At(long draw, int number, uint kind)
    {
        var block = Philox.Block(new((uint)draw, (uint)(draw >> 32), unchecked((uint)number), kind), _seed, 0);
        var bits = ((ulong)block.B << 32 | block.A) >> 12;
        return (bits + 0.5) * (1.0 / (1UL << 52));
    }
}
