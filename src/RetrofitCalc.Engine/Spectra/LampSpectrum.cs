using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Spectra;

/// <summary>Gives a spectrum of known shape the amount its lamp puts out, so that lamps can be added (E-47).</summary>
public static class LampSpectrum
{
    /// <summary>The spectrum of a lamp with so many photons of 400–700 nm. [W/nm]</summary>
    /// <param name="shape">Its shape; an amount it had before is replaced.</param>
    /// <param name="photons">Its output; more than zero. [µmol/s]</param>
    /// <exception cref="ArgumentException">The samples do not reach over 400–700 nm or hold nothing there, or the output is zero.</exception>
    public static SpectralDistribution WithPhotons(SpectralDistribution shape, PhotonFlux photons) =>
        Scaled(shape, PlantBands.Par, photons.MicromolesPerSecond, shape.Photons(PlantBands.Par));

    /// <summary>The spectrum of a lamp with so many lumens. [W/nm]</summary>
    /// <param name="shape">Its shape; an amount it had before is replaced.</param>
    /// <param name="light">Its output; more than zero. [lm]</param>
    /// <param name="tables">Holds V(λ).</param>
    /// <exception cref="ArgumentException">The samples do not reach over 400–700 nm or hold nothing there, or the output is zero.</exception>
    public static SpectralDistribution WithLight(SpectralDistribution shape, LuminousFlux light, ColorimetricTables tables) =>
        Scaled(shape, PlantBands.Par, light.Lumens, shape.Light(tables));

    /// <summary>The spectrum of a lamp with so much radiation over all its samples. [W/nm]</summary>
    /// <param name="shape">Its shape; an amount it had before is replaced.</param>
    /// <param name="radiation">Its output; more than zero. [W]</param>
    /// <exception cref="ArgumentException">The output is zero or less.</exception>
    public static SpectralDistribution WithRadiation(SpectralDistribution shape, Power radiation) =>
        Scaled(shape, shape.Curve.Range, radiation.Watts, shape.Radiation(shape.Curve.Range));

    private static SpectralDistribution Scaled(SpectralDistribution shape, SpectralBand needed, double wanted, double had)
    {
        if (!shape.Curve.Covers(needed) || had <= 0)
            throw new ArgumentException($"The samples of {shape.Name} hold nothing to scale between {needed.From.Nanometres} and {needed.To.Nanometres} nm.", nameof(shape));
        if (wanted <= 0)
            throw new ArgumentException($"A lamp with an output of {wanted} is dark.", nameof(wanted));
        return shape.Times(wanted / had, SpectralScale.RadiantPower);
    }
}
