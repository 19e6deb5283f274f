using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Spectra;
using static System.Math;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>A luminaire with a measured distribution above a level crop.</summary>
/// <remarks>
/// E = I cos γ / d² for each part of its length, short against the height: a distribution is that of a point, measured from far away (E-58).
/// Right under a long luminaire this stays an approximation, since every part is taken to shine alike.
/// </remarks>
/// <param name="Distribution">Its intensities.</param>
/// <param name="Height">Above the level. [m, above 0]</param>
public sealed record PlacedLuminaire(LuminousIntensityDistribution Distribution, Length Height)
{
    private const int MostParts = 200;
    private const double PartsPerHeight = 5; // the five-times rule: a source a fifth as long as it is far away is a point within 1 %

    /// <summary>Above the level. [m]</summary>
    /// <exception cref="ArgumentOutOfRangeException">A height of zero.</exception>
    public Length Height { get; } = Height.Metres > 0 ? Height : throw new ArgumentOutOfRangeException(nameof(Height), Height.Metres, "Must be above 0 m.");

    /// <summary>The point straight below its middle.</summary>
    public PlanePoint Centre { get; init; }

    /// <summary>Its length from the x axis towards y. [degrees]</summary>
    public double AxisDegrees { get; init; }

    /// <summary>Turned about its length from straight down; above 0 towards the left when looking along it. [degrees, −90 to 90]</summary>
    /// <exception cref="ArgumentOutOfRangeException">Turned further than level.</exception>
    public double TiltDegrees { get; init => field = Require.InRange(value, -90, 90, nameof(TiltDegrees)); }

    /// <summary>Light that reaches a point of the level directly. [lx]</summary>
    /// <param name="point">A place on the level of the crop.</param>
    public Illuminance IlluminanceAt(PlanePoint point)
    {
        var (sine, cosine) = SinCos(AxisDegrees * PI / 180);
        double east = point.X - Centre.X, north = point.Y - Centre.Y, h = Height.Metres;
        double along = east * cosine + north * sine, across = north * cosine - east * sine;
        var (tiltSine, tiltCosine) = SinCos(TiltDegrees * PI / 180);
        var (aside, before) = (across * tiltCosine - h * tiltSine, h * tiltCosine + across * tiltSine);
        var length = Max(0, Distribution.Opening.LengthMetres);
        var parts = (int)Clamp(Ceiling(PartsPerHeight * length / h), 1, MostParts);
        var lux = 0.0;
        for (var part = 0; part < parts; part++)
        {
            var x = along - length * ((part + 0.5) / parts - 0.5);
            lux += Distribution.IntensityTowards(x, aside, before) / parts * h / Pow(x * x + across * across + h * h, 1.5);
        }
        return Illuminance.FromLux(lux);
    }

    /// <summary>The same in photons, by the spectrum's own factor. [µmol m⁻² s⁻¹]</summary>
    /// <param name="point">A place on the level of the crop.</param>
    /// <param name="factor">Lux of a photon of its light.</param>
    public PhotonFluxDensity At(PlanePoint point, LuxFactor factor) => factor.ToPhotonFluxDensity(IlluminanceAt(point));
}
