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

    /// <summary>
    /// Turned about its axis from straight down; above 0 towards the side that lies to the left when looking along the axis. A bare tube
    /// shines the same all around and does not heed it. [degrees, −90 to 90]
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Turned further than level.</exception>
    public double TiltDegrees { get; init => field = Require.InRange(value, -90, 90, nameof(TiltDegrees)); }

    /// <summary>Photons it sends above the level of its axis. [µmol/s]</summary>
    /// <remarks>Half of a bare tube's; (1 − cos tilt)/2 of a flat diffuse strip's (E-61).</remarks>
    public PhotonFlux Upwards => Output * (Emission == TubeEmission.BareTube ? 0.5 : (1 - Cos(TiltDegrees * PI / 180)) / 2);

    /// <summary>Photons that reach a point of a level surface directly.</summary>
    /// <param name="point">A place on the level of the crop.</param>
    /// <remarks>
    /// ρ = √(y² + h²), G from <see cref="AspectFactors"/> class A between the two ends as seen from the point.
    /// Strip: Φ/(πL) · h (h cos τ + y sin τ)/ρ³ · G for the tilt τ, nothing behind it (E-61); bare tube: Φ/(π²L) · h/ρ² · G (E-50).
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
            : perMetre * h * Facing(across) / (away * away * away) * seen;
        return PhotonFluxDensity.FromMicromolesPerSquareMetre(Max(0, density)); // far away the difference may round to below zero
    }

    /// <summary>The same tube with another emission.</summary>
    /// <param name="emission">Bare, or facing down.</param>
    public PlacedTube As(TubeEmission emission) => emission == Emission ? this
        : new(emission, Length, Output, Height) { Centre = Centre, AxisDegrees = AxisDegrees, TiltDegrees = TiltDegrees };

    /// <summary>How far a place across the tube lies before the strip; below zero behind it. [m]</summary>
    private double Facing(double across)
    {
        var (sine, cosine) = SinCos(TiltDegrees * PI / 180);
        return Height.Metres * cosine + across * sine;
    }

    private static double Seen(double end, double away) => AspectFactors.Parallel(AxialClass.A, Atan(end / away));
}
