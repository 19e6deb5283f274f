using RetrofitCalc.Engine.Quantities;
using static System.Math;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>Aspect factors: what a line of light gives to a surface, from opposite one of its ends to an angle along it.</summary>
/// <remarks>IES London Technical Report 11 (1968), Bean and Simons (1968), from memory; the integrals are redone in the tests (E-51).</remarks>
public static class AspectFactors
{
    /// <summary>∫ I(α) cos α dα from 0: for a surface parallel to the line. Odd in the angle.</summary>
    /// <param name="line">The fall-off of intensity along the line.</param>
    /// <param name="angle">Angle under which the line is seen. [rad, −π/2 to π/2]</param>
    /// <exception cref="ArgumentOutOfRangeException">The angle lies outside, or the class is unknown.</exception>
    public static double Parallel(AxialClass line, double angle)
    {
        var (sine, cosine) = SinCos(Angle(angle));
        var diffuse = (angle + sine * cosine) / 2;
        var squared = sine - sine * sine * sine / 3;
        return line switch
        {
            AxialClass.A => diffuse,
            AxialClass.B => (diffuse + squared) / 2,
            AxialClass.C => squared,
            AxialClass.D => Pow(cosine, 3) * sine / 4 + 0.75 * diffuse,
            AxialClass.E => (Pow(cosine, 4) * sine + 4 * squared) / 5,
            _ => throw new ArgumentOutOfRangeException(nameof(line), line, "Must be A to E."),
        };
    }

    /// <summary>∫ I(α) sin α dα from 0: for a surface at right angles to the line. Even in the angle.</summary>
    /// <param name="line">The fall-off of intensity along the line.</param>
    /// <param name="angle">Angle under which the line is seen. [rad, −π/2 to π/2]</param>
    /// <exception cref="ArgumentOutOfRangeException">The angle lies outside, or the class is unknown.</exception>
    public static double Perpendicular(AxialClass line, double angle)
    {
        var (sine, cosine) = SinCos(Angle(angle));
        return line switch
        {
            AxialClass.A => sine * sine / 2,
            AxialClass.B => sine * sine / 4 + (1 - Pow(cosine, 3)) / 6,
            AxialClass.C => (1 - Pow(cosine, 3)) / 3,
            AxialClass.D => (1 - Pow(cosine, 4)) / 4,
            AxialClass.E => (1 - Pow(cosine, 5)) / 5,
            _ => throw new ArgumentOutOfRangeException(nameof(line), line, "Must be A to E."),
        };
    }

    private static double Angle(double angle) => Require.InRange(angle, -PI / 2, PI / 2);
}
