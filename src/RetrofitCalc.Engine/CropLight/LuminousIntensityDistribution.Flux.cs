using RetrofitCalc.Engine.Quantities;
using static System.Math;

namespace RetrofitCalc.Engine.CropLight;

public sealed partial class LuminousIntensityDistribution
{
    /// <summary>All light of the luminaire, by zones between the angles. [lm]</summary>
    /// <remarks>
    /// Each zone has the mean of the intensities at its edges, and its exact solid angle: 2π (cos γ₁ − cos γ₂) for type C, all around (E-57).
    /// Zonal lumens of the IES Lighting Handbook, from memory.
    /// </remarks>
    public LuminousFlux TotalFlux => LuminousFlux.FromLumens(Type switch
    {
        PhotometricType.C => Sum(_vertical.Degrees, DownToUp, MeanAround),
        PhotometricType.B => Sum(_horizontal.Degrees, AcrossPole, OverPlane) * MirroredHorizontally,
        _ => Sum(_vertical.Degrees, AcrossPole, OverLevel) * MirroredVertically,
    });

    private static double Sum(IReadOnlyList<double> edges, Func<double, double, double> zone, Func<int, double> intensity)
    {
        var sum = 0.0;
        for (var i = 1; i < edges.Count; i++)
            sum += zone(edges[i - 1] * PI / 180, edges[i] * PI / 180) * (intensity(i - 1) + intensity(i)) / 2;
        return sum;
    }

    private static double DownToUp(double from, double to) => 2 * PI * (Cos(from) - Cos(to));

    /// <summary>∫ cos over the angle within a plane; the other angle is in the mean.</summary>
    private static double AcrossPole(double from, double to) => Sin(to) - Sin(from);

    private double MirroredHorizontally => _horizontal.First >= 0 ? 2 : 1;

    private double MirroredVertically => _vertical.First >= 0 ? 2 : 1;

    /// <summary>Mean over all planes of a type C distribution at one vertical angle.</summary>
    private double MeanAround(int vertical)
    {
        var planes = _horizontal.Degrees;
        if (planes.Count == 1) return _candelas[0][vertical];
        var sum = Trapezoid(planes, plane => _candelas[plane][vertical]);
        if (Symmetry != DistributionSymmetry.None) return sum / _horizontal.Span;
        var seam = 360 - _horizontal.Span;
        return (sum + seam * (_candelas[0][vertical] + _candelas[^1][vertical]) / 2) / 360;
    }

    /// <summary>∫ over the vertical angle of type B at one horizontal angle. [cd·rad]</summary>
    private double OverPlane(int horizontal) =>
        Trapezoid(_vertical.Degrees, vertical => _candelas[horizontal][vertical]) * PI / 180 * MirroredVertically;

    /// <summary>∫ over the horizontal angle of type A at one vertical angle. [cd·rad]</summary>
    private double OverLevel(int vertical) =>
        Trapezoid(_horizontal.Degrees, horizontal => _candelas[horizontal][vertical]) * PI / 180 * MirroredHorizontally;

    private static double Trapezoid(IReadOnlyList<double> at, Func<int, double> value)
    {
        var sum = 0.0;
        for (var i = 1; i < at.Count; i++) sum += (at[i] - at[i - 1]) * (value(i - 1) + value(i)) / 2;
        return sum;
    }
}
