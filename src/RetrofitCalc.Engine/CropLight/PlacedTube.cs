using RetrofitCalc.Engine.Quantities;
using static System.Math;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>One lit tube above a level crop: a line of even output, held level.</summary>
/// <remarks>Closed forms of a finite diffuse line (E-50). Only the direct light: what sides and shelf reflect is not in it.</remarks>
public sealed record PlacedTube
{
    /// <summary>Places a tube.</summary>
    /// <param name="emission">Bare, or facing down.</param>
    /// <param name="length">Lit length. [m, above 0]</param>
    /// <param name="output">Photons it sends out, over all directions. [µmol/s]</param>
    /// <param name="height">Above the level on which light is wanted. [m, above 0]</param>
    /// <exception cref="ArgumentOutOfRangeException">A length or height of zero.</exception>
    public PlacedTube(TubeEmission emission, Length length, PhotonFlux output, Length height)
    {
        Require.InRange(length.Metres, double.Epsilon, double.MaxValue, nameof(length));
        Require.InRange(height.Metres, double.Epsilon, double.MaxValue, nameof(height));
        (Emission, Length, Output, Height) = (emission, length, output, height);
    }

    /// <summary>Bare, or facing down.</summary>
    public TubeEmission Emission { get; }

    /// <summary>Lit length. [m]</summary>
    public Length Length { get; }

    /// <summary>Photons it sends out, over all directions. [µmol/s]</summary>
    public PhotonFlux Output { get; }

    /// <summary>Above the level on which light is wanted. [m]</summary>
    public Length Height { get; }

    /// <summary>The point straight below its middle.</summary>
    public PlanePoint Centre { get; init; }

    /// <summary>Its axis from the x axis towards y: 0 lies along x, 90 along y. [degrees]</summary>
    public double AxisDegrees { get; init; }

    /// <summary>Photons that reach a point of a level surface directly.</summary>
    /// <param name="point">A place on the level of the crop.</param>
    /// <remarks>
    /// ρ = √(y² + h²), G from <see cref="AspectFactors"/> class A between the two ends as seen from the point.
    /// Strip: Φ/(πL) · h²/ρ³ · G; bare tube: Φ/(π²L) · h/ρ² · G (E-50).
    /// </remarks>
    public PhotonFluxDensity At(PlanePoint point)
    {
        var (sine, cosine) = SinCos(AxisDegrees * PI / 180);
        double east = point.X - Centre.X, north = point.Y - Centre.Y, h = Height.Metres;
        double along = east * cosine + north * sine, across = north * cosine - east * sine;
        var away = Sqrt(across * across + h * h);
        var seen = Seen(Length.Metres / 2 - along, away) - Seen(-Length.Metres / 2 - along, away);
        var perMetre = Output.MicromolesPerSecond / (PI * Length.Metres);
        var density = Emission == TubeEmission.BareTube
            ? perMetre / PI * h / (away * away) * seen
            : perMetre * h * h / (away * away * away) * seen;
        return PhotonFluxDensity.FromMicromolesPerSquareMetre(Max(0, density)); // far away the difference may round to below zero
    }

    private static double Seen(double end, double away) => AspectFactors.Parallel(AxialClass.A, Atan(end / away));
}
