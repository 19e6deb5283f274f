namespace RetrofitCalc.Engine.Spectra;

/// <summary>How the photons of 400–700 nm are shared among three bands of 100 nm; the three add up to one (E-43).</summary>
/// <param name="Blue">400–500 nm. [unitless, 0–1]</param>
/// <param name="Green">500–600 nm. [unitless, 0–1]</param>
/// <param name="Red">600–700 nm. [unitless, 0–1]</param>
public sealed record PhotonFractions(double Blue, double Green, double Red)
{
    /// <summary>Shares of a spectrum; null where its samples do not reach over 400–700 nm, or hold nothing there.</summary>
    internal static PhotonFractions? Of(SpectralDistribution spectrum)
    {
        var par = spectrum.Photons(PlantBands.Par);
        if (!spectrum.Curve.Covers(PlantBands.Par) || par <= 0)
            return null;
        return new(spectrum.Photons(PlantBands.Blue) / par, spectrum.Photons(PlantBands.Green) / par, spectrum.Photons(PlantBands.Red) / par);
    }
}
