using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Spectra;

/// <summary>Phases of daylight (CIE 15): a colour for each temperature, and a spectrum of three components for each colour.</summary>
internal static class DaylightLocus
{
    public const double Coolest = 25_000;
    private const double Warmest = 4000;
    private const double Turn = 7000;

    /// <summary>Relative spectrum at a temperature [K, 4,000–25,000]. The two multipliers are not rounded, as CIE rounds them for its standard illuminants only.</summary>
    public static double[] Power(SpectralNodes nodes, double kelvins, DaylightComponents components)
    {
        var (x, y) = At(kelvins);
        var divisor = 0.0241 + 0.2562 * x - 0.7341 * y;
        var first = (-1.3515 - 1.7703 * x + 5.9114 * y) / divisor;
        var second = (0.0300 - 31.4424 * x + 30.0717 * y) / divisor;
        return [.. nodes.Nm.Select(nm => components.Mean.At(nm) + first * components.First.At(nm) + second * components.Second.At(nm))];
    }

    private static Chromaticity At(double kelvins)
    {
        var t = 1000 / Require.InRange(kelvins, Warmest, Coolest);
        var x = kelvins <= Turn
            ? -4.6070 * t * t * t + 2.9678 * t * t + 0.09911 * t + 0.244063
            : -2.0064 * t * t * t + 1.9018 * t * t + 0.24748 * t + 0.237040;
        return new(x, -3.000 * x * x + 2.870 * x - 0.275);
    }
}
