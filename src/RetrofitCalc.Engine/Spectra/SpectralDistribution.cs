using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Spectra;

/// <summary>What the values of a spectrum mean.</summary>
public enum SpectralScale
{
    /// <summary>Only the shape is known: ratios can be told, amounts cannot.</summary>
    Relative,
    /// <summary>Radiant power leaving the source. [W/nm]</summary>
    RadiantPower,
}

/// <summary>Radiation of a source over wavelength, on the watt basis.</summary>
/// <remarks>Values are zero or more and not all zero. A straight line joins the samples; outside them nothing is known and nothing is counted.</remarks>
public sealed class SpectralDistribution
{
    /// <summary>Makes a spectrum.</summary>
    /// <param name="name">What the page calls it.</param>
    /// <param name="curve">Values over wavelength. [relative, or W/nm]</param>
    /// <param name="scale">What the values mean.</param>
    /// <param name="provenance">Where it comes from.</param>
    /// <exception cref="ArgumentException">A value is negative, or all are zero.</exception>
    public SpectralDistribution(string name, SpectralCurve curve, SpectralScale scale, Provenance provenance)
    {
        if (curve.Samples.FirstOrDefault(sample => sample.Value < 0) is { Value: < 0 } negative)
            throw new ArgumentException($"A spectrum has no negative values: {negative.Value} at {negative.At.Nanometres} nm.", nameof(curve));
        if (curve.Samples.All(sample => sample.Value == 0))
            throw new ArgumentException("A spectrum of nothing but zeros is dark.", nameof(curve));
        (Name, Curve, Scale, Provenance) = (name, curve, scale, provenance);
    }

    /// <summary>What the page calls it.</summary>
    public string Name { get; }

    /// <summary>Values over wavelength. [relative, or W/nm]</summary>
    public SpectralCurve Curve { get; }

    /// <summary>What the values mean.</summary>
    public SpectralScale Scale { get; }

    /// <summary>Where it comes from.</summary>
    public Provenance Provenance { get; }

    /// <summary>The same samples on the photon basis, for plots: value · λ / 119.62657 (E-41). [relative, or µmol s⁻¹ nm⁻¹]</summary>
    public IReadOnlyList<SpectralSample> PhotonSamples =>
        [.. Curve.Samples.Select(sample => sample with { Value = sample.Value * PhotonEnergy.MicromolesPerJoule(sample.At) })];

    /// <summary>Radiation in a band, split at its edges (E-40). [W; relative · nm when the scale is relative]</summary>
    /// <param name="band">The band. [nm]</param>
    public double Radiation(SpectralBand band) => Sum(band, static _ => 1);

    /// <summary>Photons in a band, split at its edges (E-40, E-41). [µmol/s; relative when the scale is relative]</summary>
    /// <param name="band">The band. [nm]</param>
    public double Photons(SpectralBand band) => Sum(band, static nm => nm / PhotonEnergy.WattNanometresPerMicromole);

    /// <summary>Light: 683 · ∫ S · V over 380–780 nm (E-42). [lm; relative when the scale is relative]</summary>
    /// <param name="tables">Holds V(λ).</param>
    public double Light(ColorimetricTables tables) => ColorimetricTables.LumensPerWatt * Sum(PlantBands.Visible, tables.EyeSensitivity.At);

    /// <summary>The same spectrum with every value times a factor, on another scale.</summary>
    internal SpectralDistribution Times(double factor, SpectralScale scale) =>
        new(Name, new([.. Curve.Samples.Select(sample => sample with { Value = sample.Value * factor })]), scale, Provenance);

    private double Sum(SpectralBand band, Func<double, double> weight)
    {
        var low = Math.Max(band.From.Nanometres, Curve.Range.From.Nanometres);
        var high = Math.Min(band.To.Nanometres, Curve.Range.To.Nanometres);
        if (high <= low)
            return 0;
        var (at, widths) = SpectralNodes.Of(Curve, SpectralBand.OfNanometres(low, high));
        var sum = 0.0;
        for (var i = 0; i < at.Length; i++)
            sum += Curve.At(at[i]) * weight(at[i]) * widths[i];
        return sum;
    }
}
