using RetrofitCalc.Engine.CropLight;

namespace RetrofitCalc.Files.Photometry;

/// <summary>A line above the numbers. Free text has no keyword.</summary>
public sealed record PhotometricLabel(string Keyword, string Text);

/// <summary>How the lamp's output changes when the luminaire is tilted.</summary>
/// <param name="LampGeometry">How the lamp lies in the luminaire: 1 upright, 2 and 3 level. </param>
public sealed record LampTilt(int LampGeometry, IReadOnlyList<double> Degrees, IReadOnlyList<double> Multipliers);

/// <summary>Factors as the file gives them; those that multiply are already in the intensities.</summary>
/// <param name="Second">Ballast–lamp factor to 1995, number for later use in 2002, kind of file in 2019.</param>
public sealed record PhotometricFactors(double Candela, double Ballast, double Second);

/// <summary>What an IES LM-63 file holds.</summary>
public sealed record PhotometricFile(Lm63Edition Edition, LuminousIntensityDistribution Distribution)
{
    public IReadOnlyList<PhotometricLabel> Labels { get; init; } = [];

    /// <summary>Null for TILT=NONE, and where the tilt lies in another file.</summary>
    public LampTilt? Tilt { get; init; }

    public PhotometricFactors Factors { get; init; } = new(1, 1, 1);

    /// <summary>Where the file strays from the format and how it was read, for the person who chose it.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];

    /// <summary>Text of the first label with a keyword.</summary>
    public string? Label(string keyword) =>
        Labels.FirstOrDefault(label => label.Keyword.Equals(keyword, StringComparison.OrdinalIgnoreCase))?.Text;
}
