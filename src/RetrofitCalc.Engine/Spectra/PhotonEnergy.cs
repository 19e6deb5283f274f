using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Spectra;

/// <summary>What a photon carries (E-41, S-52: the constants the SI fixes).</summary>
public static class PhotonEnergy
{
    private const double PlanckJouleSeconds = 6.62607015e-34;
    private const double LightMetresPerSecond = 299_792_458;
    private const double PhotonsPerMole = 6.02214076e23;
    private const double NanometresPerMetre = 1e9;
    private const double MicromolesPerMole = 1e6;

    /// <summary>Radiant power of one micromole of photons a second, times their wavelength: h · c · N_A = 119.62657. [W·nm per µmol/s]</summary>
    public const double WattNanometresPerMicromole =
        PlanckJouleSeconds * LightMetresPerSecond * PhotonsPerMole * NanometresPerMetre / MicromolesPerMole;

    /// <summary>Photons in a joule of radiation of one wavelength: λ / 119.62657. [µmol/J]</summary>
    /// <param name="at">The wavelength. [nm]</param>
    public static double MicromolesPerJoule(Wavelength at) => at.Nanometres / WattNanometresPerMicromole;
}
