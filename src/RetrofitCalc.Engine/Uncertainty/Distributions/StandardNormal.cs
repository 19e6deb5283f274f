using MathNet.Numerics;

namespace RetrofitCalc.Engine.Uncertainty.Distributions;

/// <summary>Normal distribution of mean 0 and standard deviation 1.</summary>
internal static class StandardNormal
{
    /// <summary>Nine in ten lie below it.</summary>
    public static readonly double NinetyPercent = Quantile(0.9);

    public static double Quantile(double chance) => -Constants.Sqrt2 * SpecialFunctions.ErfcInv(2 * chance);

    public static double Cumulative(double z) => SpecialFunctions.Erfc(-z / Constants.Sqrt2) / 2;
}
