using RetrofitCalc.Engine.Catalogue;

namespace RetrofitCalc.Engine.Spectra;

/// <summary>A published factor for a family of lamps, for readings whose spectrum nobody has.</summary>
/// <param name="Name">The family.</param>
/// <param name="Factor">The factor.</param>
/// <param name="Uncertainty">How far a lamp of the family may lie from it, either way. [unitless share]</param>
/// <param name="Provenance">Where the factor comes from.</param>
public sealed record NamedLuxFactor(string Name, LuxFactor Factor, double Uncertainty, Provenance Provenance);

/// <summary>The factors to choose from (S-55).</summary>
public static class NamedLuxFactors
{
    /// <summary>Spread of lamps within a family against one factor, seen over measured spectra. [unitless share]</summary>
    private const double FamilySpread = 0.07;

    private static readonly Provenance Thimijan = new(EvidenceKind.Computed, "Thimijan and Heins, HortScience 18:818 (1983), as quoted on an instrument maker's page");
    private static readonly Provenance Deitzer = new(EvidenceKind.Computed, "Deitzer, NASA lighting workshop (1994), as quoted on a mailing list of 1999");
    private static readonly Provenance LedSeries = new(EvidenceKind.Computed, "range 60–75 computed from the CIE LED series; red-rich spectra lie below");

    /// <summary>All families.</summary>
    public static IReadOnlyList<NamedLuxFactor> All { get; } =
    [
        new("Cool white fluorescent", new(74), FamilySpread, Thimijan),
        new("White LED, spectrum unknown", new(67.5), 7.5 / 67.5, LedSeries),
        new("Sunlight", new(54), FamilySpread, Thimijan),
        new("High-pressure sodium, mogul base", new(82), FamilySpread, Thimijan),
        new("High-pressure sodium, double-ended", new(77), FamilySpread, Thimijan),
        new("Metal halide", new(71), FamilySpread, Thimijan),
        new("Ceramic metal halide, 4200 K", new(65), FamilySpread, Thimijan),
        new("Ceramic metal halide, 3100 K", new(59), FamilySpread, Thimijan),
        new("Incandescent", new(49), FamilySpread, Deitzer),
    ];
}
