using MathNet.Numerics.Integration;
using static System.Math;

namespace RetrofitCalc.Engine.CropLight;

public sealed partial class LuminousIntensityDistribution
{
    private const int Rings = 64, Turns = 72;

    /// <summary>Share of the light sent above the luminaire's own level when it is turned about its length. [unitless, 0–1]</summary>
    /// <param name="tiltDegrees">From straight down. [degrees]</param>
    /// <remarks>∫ I dΩ over the upper half by that over all directions (Gauss–Legendre in the cosine, even steps around). Zero in the dark.</remarks>
    public double UpwardShare(double tiltDegrees)
    {
        var (down, up) = (Half(1, tiltDegrees), Half(-1, tiltDegrees));
        return down + up > 0 ? up / (down + up) : 0;
    }

    private double Half(int side, double tiltDegrees)
    {
        var (tiltSine, tiltCosine) = SinCos(tiltDegrees * PI / 180);
        return GaussLegendreRule.Integrate(cosine =>
        {
            double sine = Sqrt(1 - cosine * cosine), below = side * cosine, sum = 0;
            for (var turn = 0; turn < Turns; turn++)
            {
                var (across, along) = SinCos(2 * PI * (turn + 0.5) / Turns);
                across *= sine;
                sum += IntensityTowards(along * sine, across * tiltCosine - below * tiltSine, below * tiltCosine + across * tiltSine);
            }
            return sum;
        }, 0, 1, Rings);
    }
}
