using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Spectra;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>A lamp over the bench, or a whole luminaire whose distribution is known.</summary>
/// <param name="Tube">Where it is and how many photons it sends out. With a distribution: the luminaire's middle, and all its photons.</param>
/// <param name="Distribution">How it sends them out, where a file tells; only its shape counts here. Null for the tube's own emission.</param>
/// <param name="Factor">Lux of its light; null when not known. It made photons of the file's lumens and is kept to say so.</param>
public sealed record LightSource(PlacedTube Tube, LuminousIntensityDistribution? Distribution = null, LuxFactor? Factor = null)
{
    /// <summary>Photons that reach points directly, in their order. [µmol m⁻² s⁻¹]</summary>
    /// <param name="points">Places on the level of the crop.</param>
    /// <remarks>With a distribution: illuminance by the file, times the photons sent out over the file's own flux.</remarks>
    public IReadOnlyList<PhotonFluxDensity> Over(IReadOnlyList<PlanePoint> points)
    {
        if (Distribution is null) return LightField.Over([Tube], points);
        var flux = Distribution.TotalFlux.Lumens;
        var scale = flux > 0 ? Tube.Output.MicromolesPerSecond / flux : 0;
        var placed = new PlacedLuminaire(Distribution, Tube.Height) { Centre = Tube.Centre, AxisDegrees = Tube.AxisDegrees, TiltDegrees = Tube.TiltDegrees };
        return [.. points.Select(point => PhotonFluxDensity.FromMicromolesPerSquareMetre(placed.IlluminanceAt(point).Lux * scale))];
    }
    /// <summary>Photons sent above its own level. [µmol/s]</summary>
    public PhotonFlux Upwards => Distribution is null ? Tube.Upwards : Tube.Output * Distribution.UpwardShare(Tube.TiltDegrees);
}
