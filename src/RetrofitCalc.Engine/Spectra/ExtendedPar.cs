using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Spectra;

/// <summary>PAR with its far red beside it: context only, never added to a yield or a saving (E-43, S-51).</summary>
/// <param name="Par">Photons of 400–700 nm. [µmol m⁻² s⁻¹]</param>
/// <param name="FarRed">Photons of 700–750 nm. [µmol m⁻² s⁻¹]</param>
/// <remarks>Extended PAR, 400–750 nm (Zhen, van Iersel and Bugbee 2021), is no part of ANSI/ASABE S640; far red counts in it only when mixed with shorter wavelengths.</remarks>
public sealed record ExtendedPar(PhotonFluxDensity Par, PhotonFluxDensity FarRed)
{
    /// <summary>Photons of 400–750 nm. [µmol m⁻² s⁻¹]</summary>
    public PhotonFluxDensity Total => Par + FarRed;

    /// <summary>Share of far red in the total; zero in the dark. [unitless, 0–1]</summary>
    public double FarRedShare => Total > PhotonFluxDensity.Zero ? FarRed / Total : 0;
}
