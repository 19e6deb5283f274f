using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>Light of many tubes together: what each gives is added.</summary>
public static class LightField
{
    /// <summary>Photons that reach a point directly from all tubes. [µmol m⁻² s⁻¹]</summary>
    /// <param name="tubes">The lit tubes.</param>
    /// <param name="point">A place on the level of the crop.</param>
    public static PhotonFluxDensity At(IEnumerable<PlacedTube> tubes, PlanePoint point) =>
        tubes.Aggregate(PhotonFluxDensity.Zero, (sum, tube) => sum + tube.At(point));

    /// <summary>The same at many points, in their order, several at a time (E-63). [µmol m⁻² s⁻¹]</summary>
    /// <param name="tubes">The lit tubes.</param>
    /// <param name="points">Places on the level of the crop.</param>
    public static IReadOnlyList<PhotonFluxDensity> Over(IReadOnlyList<PlacedTube> tubes, IEnumerable<PlanePoint> points) =>
        new TubeField(tubes).Over(points as PlanePoint[] ?? [.. points]);

    /// <summary>Photons that reach points directly from all lamps and luminaires, in their order. [µmol m⁻² s⁻¹]</summary>
    /// <param name="sources">The lit ones.</param>
    /// <param name="points">Places on the level of the crop.</param>
    public static IReadOnlyList<PhotonFluxDensity> Over(IReadOnlyList<LightSource> sources, IReadOnlyList<PlanePoint> points)
    {
        var sum = new TubeField(sources.Where(source => source.Distribution is null).Select(source => source.Tube)).Over(points as PlanePoint[] ?? [.. points]);
        foreach (var source in sources.Where(source => source.Distribution is not null))
            foreach (var (at, light) in source.Over(points).Index())
                sum[at] += light;
        return sum;
    }

    /// <summary>Light below a line that never ends: F/(2πh) for F µmol/s of each metre. [µmol m⁻² s⁻¹]</summary>
    /// <param name="outputPerMetre">What one metre of the diffuse line sends out. [µmol/s]</param>
    /// <param name="height">Above the level. [m, above 0]</param>
    /// <remarks>IES Lighting Handbook, an early edition, p. 8-41: π/2 · I/d with flux of a metre = π² I (E-50).</remarks>
    /// <exception cref="ArgumentOutOfRangeException">A height of zero.</exception>
    public static PhotonFluxDensity BelowEndlessLine(PhotonFlux outputPerMetre, Length height) =>
        PhotonFluxDensity.FromMicromolesPerSquareMetre(
            outputPerMetre.MicromolesPerSecond / (2 * Math.PI * Require.InRange(height.Metres, double.Epsilon, double.MaxValue, nameof(height))));
}
