using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Spectra;

/// <summary>What a lux meter and a quantum meter say of the same light (E-42).</summary>
/// <remarks>Holds for one spectrum only: the same lux of another lamp is another number of photons.</remarks>
public sealed record LuxFactor
{
    /// <summary>Makes a factor.</summary>
    /// <param name="luxPerMicromole">Lux of one µmol m⁻² s⁻¹ between 400 and 700 nm; more than zero. [lx per µmol m⁻² s⁻¹]</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number above zero.</exception>
    public LuxFactor(double luxPerMicromole) => LuxPerMicromole = Require.InRange(luxPerMicromole, double.Epsilon, double.MaxValue);

    /// <summary>Lux of one µmol m⁻² s⁻¹; also lumens of one µmol/s. [lx per µmol m⁻² s⁻¹]</summary>
    public double LuxPerMicromole { get; }

    /// <summary>Foot-candles of one µmol m⁻² s⁻¹. [fc per µmol m⁻² s⁻¹]</summary>
    public double FootCandlesPerMicromole => LuxPerMicromole / UnitConversions.LuxPerFootCandle;

    /// <summary>Photons of one kilolux. [µmol m⁻² s⁻¹ per klx]</summary>
    public double MicromolesPerKilolux => 1000 / LuxPerMicromole;

    /// <summary>What a lux meter reads.</summary>
    /// <param name="photons">Photons of 400–700 nm on the area. [µmol m⁻² s⁻¹]</param>
    public Illuminance ToIlluminance(PhotonFluxDensity photons) => Illuminance.FromLux(photons.MicromolesPerSquareMetre * LuxPerMicromole);

    /// <summary>What a quantum meter reads.</summary>
    /// <param name="light">Light on the area. [lx]</param>
    public PhotonFluxDensity ToPhotonFluxDensity(Illuminance light) => PhotonFluxDensity.FromMicromolesPerSquareMetre(light.Lux / LuxPerMicromole);

    /// <summary>Photons of a lamp sold by its lumens.</summary>
    /// <param name="light">Light of the lamp. [lm]</param>
    public PhotonFlux ToPhotonFlux(LuminousFlux light) => PhotonFlux.FromMicromolesPerSecond(light.Lumens / LuxPerMicromole);

    /// <summary>How many more photons another lamp gives at the same lux: this factor over the other, less one. [unitless; negative when fewer]</summary>
    /// <param name="other">Factor of the other lamp.</param>
    /// <remarks>Example: 76.51 to 69.77 lx per µmol gives +9.7 %.</remarks>
    public double PhotonGainAtEqualLux(LuxFactor other) => LuxPerMicromole / other.LuxPerMicromole - 1;
}
