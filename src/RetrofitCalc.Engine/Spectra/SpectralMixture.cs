using RetrofitCalc.Engine.Catalogue;

namespace RetrofitCalc.Engine.Spectra;

/// <summary>Lamps of one spectrum in a luminaire.</summary>
/// <param name="Lamp">One lamp, in watts: see <see cref="LampSpectrum"/>. [W/nm]</param>
/// <param name="Count">How many burn; more than zero, parts of one allowed for dimming. [count]</param>
public sealed record MixturePart(SpectralDistribution Lamp, double Count);

/// <summary>Several lamps burning together, weighted by what each puts out (E-47).</summary>
public static class SpectralMixture
{
    /// <summary>The sum of the lamps. [W/nm]</summary>
    /// <param name="name">What the page calls it.</param>
    /// <param name="parts">At least one part.</param>
    /// <remarks>Reaches only over wavelengths every lamp was measured at: what is not known of one lamp is not known of the sum.</remarks>
    /// <exception cref="ArgumentException">No parts, a lamp known by its shape only, a count of zero or less, or lamps whose samples have no wavelengths in common.</exception>
    public static SpectralDistribution Of(string name, IReadOnlyList<MixturePart> parts)
    {
        Check(parts);
        var low = parts.Max(part => part.Lamp.Curve.Range.From.Nanometres);
        var high = parts.Min(part => part.Lamp.Curve.Range.To.Nanometres);
        if (high <= low)
            throw new ArgumentException("The lamps' samples have no wavelengths in common.", nameof(parts));
        var at = parts.SelectMany(part => part.Lamp.Curve.Samples.Select(sample => sample.At.Nanometres))
            .Where(nm => nm > low && nm < high).Append(low).Append(high).Distinct().Order();
        var samples = at.Select(nm => SpectralSample.Of(nm, parts.Sum(part => part.Count * part.Lamp.Curve.At(nm))));
        var sources = string.Join("; ", parts.Select(part => part.Lamp.Provenance.Source).Where(text => text.Length > 0).Distinct());
        var memory = parts.Any(part => part.Lamp.Provenance.FromMemory);
        return new(name, new(samples), SpectralScale.RadiantPower, new(EvidenceKind.Computed, $"Sum of lamps: {sources}", memory));
    }

    private static void Check(IReadOnlyList<MixturePart> parts)
    {
        if (parts.Count == 0)
            throw new ArgumentException("A mixture needs at least one lamp.", nameof(parts));
        foreach (var part in parts)
        {
            if (part.Lamp.Scale != SpectralScale.RadiantPower)
                throw new ArgumentException($"Only the shape of {part.Lamp.Name} is known: give it an output first.", nameof(parts));
            if (!(part.Count > 0) || !double.IsFinite(part.Count))
                throw new ArgumentException($"{part.Count} lamps of {part.Lamp.Name} are no part of a mixture.", nameof(parts));
        }
    }
}
