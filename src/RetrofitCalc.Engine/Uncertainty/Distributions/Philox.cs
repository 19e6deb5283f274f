namespace RetrofitCalc.Engine.Uncertainty.Distributions;

/// <summary>Four words of 32 bits.</summary>
/// <param name="A">Lowest word.</param>
/// <param name="B">Second word.</param>
/// <param name="C">Third word.</param>
/// <param name="D">Highest word.</param>
public readonly record struct Words(uint A, uint B, uint C, uint D);

/// <summary>Philox 4×32-10: a counter in, four random words out (S-94).</summary>
/// <remarks>Public so that anyone can hold it against the published answers.</remarks>
public static class Philox
{
    private const uint FirstFactor = 0xD2511F53, SecondFactor = 0xCD9E8D57;
    private const uint FirstStep = 0x9E3779B9, SecondStep = 0xBB67AE85;

    /// <summary>The block of a counter.</summary>
    /// <param name="counter">Counter.</param>
    /// <param name="first">First word of the key.</param>
    /// <param name="second">Second word of the key.</param>
    public static Words Block(Words counter, uint first, uint second)
    {
        for (var round = 0; round < 10; round++)
        {
            var (one, two) = ((ulong)FirstFactor * counter.A, (ulong)SecondFactor * counter.C);
            counter = new((uint)(two >> 32) ^ counter.B ^ first, (uint)two, (uint)(one >> 32) ^ counter.D ^ second, (uint)one);
            unchecked
            {
                first += FirstStep;
                second += SecondStep;
            }
        }
        return counter;
    }
}
