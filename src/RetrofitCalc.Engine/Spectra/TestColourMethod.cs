namespace RetrofitCalc.Engine.Spectra;

/// <summary>The test-colour method of CIE 13.3-1995 (E-46, S-54).</summary>
internal static class TestColourMethod
{
    private const double DaylightFromKelvins = 5000;
    private const int GeneralCount = 8;

    /// <summary>Indices of a lamp [power at the nodes]; null above 25,000 K, where no daylight is defined.</summary>
    public static ColourRendering? Of(double[] lamp, double kelvins, ColourSums sums, ColorimetricTables tables)
    {
        if (kelvins > DaylightLocus.Coolest)
            return null;
        var kind = kelvins < DaylightFromKelvins ? ReferenceLight.BlackBody : ReferenceLight.Daylight;
        var reference = kind == ReferenceLight.BlackBody
            ? PlanckLocus.Power(sums.Nodes, kelvins)
            : DaylightLocus.Power(sums.Nodes, kelvins, tables.Daylight);
        var (under, against) = (new Illuminated(lamp, sums), new Illuminated(reference, sums));
        double[] special = [.. tables.TestColours.Select(colour => Index(sums.Nodes.Of(colour), under, against))];
        return new()
        {
            General = special.Take(GeneralCount).Average(),
            Special = special,
            Reference = kind,
            ChromaticityDifference = under.White.DistanceTo(against.White),
        };
    }

    private static double Index(double[] reflectance, Illuminated lamp, Illuminated reference)
    {
        var (seen, brightness) = lamp.Colour(reflectance);
        var (trueColour, trueBrightness) = reference.Colour(reflectance);
        var shifted = UniformSpace(Adapted(seen, lamp.White, reference.White), brightness, reference.White);
        var expected = UniformSpace((trueColour.U, trueColour.V), trueBrightness, reference.White);
        var (u, v, w) = (expected.U - shifted.U, expected.V - shifted.V, expected.W - shifted.W);
        return 100 - 4.6 * Math.Sqrt(u * u + v * v + w * w);
    }

    /// <summary>The colour an eye used to the lamp would see under the reference.</summary>
    private static (double U, double V) Adapted(Chromaticity colour, Chromaticity lamp, Chromaticity reference)
    {
        var c = C(reference) / C(lamp) * C(colour);
        var d = D(reference) / D(lamp) * D(colour);
        var divisor = 16.518 + 1.481 * c - d;
        return ((10.872 + 0.404 * c - 4 * d) / divisor, 5.520 / divisor);
    }

    private static double C(Chromaticity at) => (4 - at.U - 10 * at.V) / at.V;

    private static double D(Chromaticity at) => (1.708 * at.V + 0.404 - 1.481 * at.U) / at.V;

    private static (double U, double V, double W) UniformSpace((double U, double V) at, double brightness, Chromaticity white)
    {
        var w = 25 * Math.Cbrt(brightness) - 17;
        return (13 * w * (at.U - white.U), 13 * w * (at.V - white.V), w);
    }

    /// <summary>Surfaces under one light, whose white has the brightness 100.</summary>
    private sealed class Illuminated(double[] power, ColourSums sums)
    {
        private readonly Tristimulus _white = sums.Of(power);

        public Chromaticity White => Chromaticity.Of(_white);

        public (Chromaticity Colour, double Brightness) Colour(double[] reflectance)
        {
            var seen = sums.Of(power, reflectance);
            return (Chromaticity.Of(seen), 100 * seen.Y / _white.Y);
        }
    }
}
