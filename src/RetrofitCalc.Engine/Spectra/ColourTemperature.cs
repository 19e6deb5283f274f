namespace RetrofitCalc.Engine.Spectra;

/// <summary>The glowing black body a light looks most like (E-45).</summary>
/// <param name="Kelvins">Correlated colour temperature: the point of the Planck locus nearest in the CIE 1960 diagram. [K, 1,000–100,000]</param>
/// <param name="DistanceFromLocus">Distance from that point in the CIE 1960 diagram, positive above the locus (greenish), negative below (pinkish). [unitless]</param>
public sealed record ColourTemperature(double Kelvins, double DistanceFromLocus)
{
    /// <summary>Farther than this from the locus a colour temperature says nothing (CIE 15). [unitless]</summary>
    public const double FarthestMeaningful = 0.05;

    /// <summary>The colour temperature; null where it says nothing: too far from the locus, or outside 1,000–100,000 K.</summary>
    internal static ColourTemperature? Of(Chromaticity colour, ColourSums sums)
    {
        if (PlanckLocus.Nearest(colour, sums) is not { } kelvins)
            return null;
        var nearest = PlanckLocus.At(sums, kelvins);
        var distance = Math.CopySign(colour.DistanceTo(nearest), colour.V - nearest.V);
        return Math.Abs(distance) > FarthestMeaningful ? null : new(kelvins, distance);
    }
}
