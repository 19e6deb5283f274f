using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Spectra;

namespace RetrofitCalc.Engine.Studies;

/// <summary>How a lamp, tube or luminaire of this study gives its light, beyond what its catalogue entry says.</summary>
/// <param name="Product">Catalogue id of the lamp, tube or luminaire.</param>
public sealed record ProductLight(string Product)
{
    /// <summary>Bare or facing down; null takes a bare tube for lamps and a strip facing down for all else.</summary>
    public TubeEmission? Emission { get; init; }

    /// <summary>Id of a distribution of this study, which then wins over <see cref="Emission"/>; null without one.</summary>
    public string? Distribution { get; init; }

    /// <summary>Id of its spectrum: one of this study's, else a shipped one; null when not known.</summary>
    public string? Spectrum { get; init; }

    /// <summary>How its lumens become photons where the catalogue gives no photons; null when not known.</summary>
    public LuxConversion? Conversion { get; init; }
}

/// <summary>A photometric file taken into the study.</summary>
/// <param name="Id">Stable identifier within the study.</param>
/// <param name="Name">What the page calls it.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record StudyDistribution(string Id, string Name, Provenance Source)
{
    /// <summary>How the angles lie.</summary>
    public PhotometricType Type { get; init; }

    /// <summary>Vertical angles, rising. [degrees]</summary>
    public IReadOnlyList<double> Vertical { get; init; } = [];

    /// <summary>Horizontal angles, rising. [degrees]</summary>
    public IReadOnlyList<double> Horizontal { get; init; } = [];

    /// <summary>A row for each horizontal angle, a value for each vertical one. [cd]</summary>
    public IReadOnlyList<IReadOnlyList<double>> Candelas { get; init; } = [];

    /// <summary>The luminous part.</summary>
    public LuminousOpening Opening { get; init; }

    /// <summary>Power drawn when measured; null where the file gives none.</summary>
    public Power? InputPower { get; init; }
}

/// <summary>A spectrum taken into the study.</summary>
/// <param name="Id">Stable identifier within the study; not that of a shipped one.</param>
/// <param name="Name">What the page calls it.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record StudySpectrum(string Id, string Name, Provenance Source)
{
    /// <summary>What the values mean.</summary>
    public SpectralScale Scale { get; init; }

    /// <summary>Wavelengths, rising. [nm]</summary>
    public IReadOnlyList<double> Nanometres { get; init; } = [];

    /// <summary>A value for each. [relative, or W/nm]</summary>
    public IReadOnlyList<double> Values { get; init; } = [];
}
