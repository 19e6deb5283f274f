namespace RetrofitCalc.Engine.Spectra;

/// <summary>Colours of a glowing black body (E-45; CIE 15, c2 = 1.4388e-2 m·K).</summary>
internal static class PlanckLocus
{
    private const double SecondRadiationConstant = 1.4388e-2;
    private const double MetresPerNanometre = 1e-9;
    private const double HighestMired = 1000;
    private const double LowestMired = 10;
    private const int CoarseSteps = 120;
    private const int FineSteps = 60;
    private static readonly double GoldenShare = (Math.Sqrt(5) - 1) / 2;

    /// <summary>Spectrum at a temperature [K], relative to its value at 560 nm.</summary>
    public static double[] Power(SpectralNodes nodes, double kelvins) =>
        [.. nodes.Nm.Select(nm => Exitance(nm, kelvins) / Exitance(560, kelvins))];

    /// <summary>Temperature [K] of the nearest point of the locus, distance taken in the CIE 1960 diagram; null outside 1,000–100,000 K.</summary>
    /// <remarks>Steps of equal reciprocal temperature, along which the locus runs nearly evenly, find the valley; golden sections its floor.</remarks>
    public static double? Nearest(Chromaticity colour, ColourSums sums)
    {
        double Distance(double mired) => At(sums, 1e6 / mired).DistanceTo(colour);
        const double step = (HighestMired - LowestMired) / CoarseSteps;
        var nearest = Enumerable.Range(0, CoarseSteps + 1).MinBy(i => Distance(LowestMired + i * step));
        if (nearest is 0 or CoarseSteps)
            return null;
        var (low, high) = (LowestMired + (nearest - 1) * step, LowestMired + (nearest + 1) * step);
        for (var i = 0; i < FineSteps; i++)
        {
            var (left, right) = (high - GoldenShare * (high - low), low + GoldenShare * (high - low));
            if (Distance(left) < Distance(right))
                high = right;
            else
                low = left;
        }
        return 2e6 / (low + high);
    }

    /// <summary>Colour at a temperature. [K]</summary>
    public static Chromaticity At(ColourSums sums, double kelvins) => Chromaticity.Of(sums.Of(Power(sums.Nodes, kelvins)));

    private static double Exitance(double nm, double kelvins) =>
        Math.Pow(nm, -5) / (Math.Exp(SecondRadiationConstant / (nm * MetresPerNanometre * kelvins)) - 1);
}
