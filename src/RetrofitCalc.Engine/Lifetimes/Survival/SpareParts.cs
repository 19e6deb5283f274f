using MathNet.Numerics.Distributions;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Lifetimes.Survival;

/// <summary>Spare parts to keep so that they last until the next delivery.</summary>
/// <remarks>
/// E-90. Failures of many places, each rarely, come nearly as by chance: their number is taken as Poisson about the expected
/// number (Palm and Khinchin, S-93). Lamps that wear out are scattered less than that, so the stock is rather too large.
/// </remarks>
public static class SpareParts
{
    /// <summary>Above this expected number the normal distribution stands in, half a part added for whole numbers. [count]</summary>
    public const double LargestPoisson = 1000;

    /// <summary>Fewest spares that suffice with some certainty.</summary>
    /// <param name="expected">Failures expected until the next delivery. [count, 0 or more]</param>
    /// <param name="serviceLevel">Chance that the spares suffice. [unitless, 0.5–0.99999]</param>
    /// <returns>Spares. [count]</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number lies outside its range.</exception>
    public static int For(double expected, double serviceLevel)
    {
        Require.NotNegative(expected);
        Require.InRange(serviceLevel, 0.5, 0.99999);
        if (expected == 0) return 0;
        var guess = (int)Math.Ceiling(expected + Normal.InvCDF(0, 1, serviceLevel) * Math.Sqrt(expected) - 0.5);
        return expected > LargestPoisson ? guess : Smallest(expected, serviceLevel, Math.Max(0, guess));
    }

    private static int Smallest(double expected, double serviceLevel, int guess)
    {
        while (guess > 0 && Poisson.CDF(expected, guess - 1) >= serviceLevel) guess--;
        while (Poisson.CDF(expected, guess) < serviceLevel) guess++;
        return guess;
    }
}
