using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Files.Photometry;
using RetrofitCalc.Reports;
using RetrofitCalc.Web.Features.Light.Spectra;

namespace RetrofitCalc.Web.Features.Light.Layout.Photometry;

/// <summary>Sentences about photometric files.</summary>
public static class PhotometryText
{
    public static string Finding(LuminousIntensityDistribution light, QuantityText text)
    {
        var highest = light.Candelas.SelectMany(plane => plane).Max();
        return $"{text.Number(light.TotalFlux.Lumens)} lm, at most {text.Number(highest)} cd{(light.Type == PhotometricType.C ? $", {text.Percent(Downward(light))} of it downward" : "")}";
    }

    /// <summary>Light below the level of the luminaire, of all. [unitless, 0–1]</summary>
    public static double Downward(LuminousIntensityDistribution light)
    {
        if (light.TotalFlux.Lumens <= 0 || light.VerticalDegrees[0] >= 90) return 0;
        var below = light.VerticalDegrees.Where(angle => angle < 90).Append(90).ToArray();
        var down = new LuminousIntensityDistribution(PhotometricType.C, below, light.HorizontalDegrees, [.. light.HorizontalDegrees.Select(plane => (IReadOnlyList<double>)[.. below.Select(angle => light.IntensityAt(angle, plane))])]);
        return Math.Min(1, down.TotalFlux / light.TotalFlux);
    }

    public static IReadOnlyList<(string Name, string Value)> Figures(LuminousIntensityDistribution light, QuantityText text) =>
    [
        ("Light", $"{text.Number(light.TotalFlux.Lumens)} lm"),
        ("Power", light.InputPower is { Watts: > 0 } power ? text.Watts(power) : QuantityText.NotKnown),
        ("Lumens for a watt", light.LumensPerWatt is { } efficacy ? $"{text.Number(efficacy)} lm/W" : QuantityText.NotKnown),
        ("Angles", Angles(light)),
        ("Symmetry", Symmetry(light.Symmetry)),
        ("Luminous part", Opening(light.Opening, text)),
    ];

    public static string Angles(LuminousIntensityDistribution light) =>
        $"type {light.Type}, {light.VerticalDegrees.Count} upright by {light.HorizontalDegrees.Count} around";

    public static string Symmetry(DistributionSymmetry symmetry) => symmetry switch
    {
        DistributionSymmetry.Axial => "the same all around",
        DistributionSymmetry.Quadrant => "a quarter, mirrored twice",
        DistributionSymmetry.Bilateral => "a half, mirrored left to right",
        DistributionSymmetry.BilateralAcross => "a half, mirrored along",
        _ => "none: every direction has its own value",
    };

    public static string Opening(LuminousOpening opening, QuantityText text)
    {
        if (opening is { WidthMetres: 0, LengthMetres: 0, HeightMetres: 0 }) return "a point";
        string Side(double metres) => text.Length(Length.FromMetres(Math.Abs(metres)));
        return $"{Side(opening.LengthMetres)} long, {Side(opening.WidthMetres)} wide{(opening.Rounded ? ", rounded" : "")}";
    }

    /// <summary>The file's lumens against those of the sheet of a product, where they differ by more than a tenth.</summary>
    public static string? Against(LuminousIntensityDistribution light, UsedProduct product, QuantityText text) =>
        product.Flux is { Lumens: > 0 } sheet && Math.Abs(light.TotalFlux / sheet - 1) > 0.1
            ? $"The file has {text.Number(light.TotalFlux.Lumens)} lm, the sheet of {product.Name} {text.Number(sheet.Lumens)} lm. Is it the same product, with as many lamps?"
            : null;

    /// <summary>Who measured what, by the labels of the file.</summary>
    public static string Source(PhotometricFile file, string name)
    {
        var labels = new[] { "MANUFAC", "LUMCAT", "LUMINAIRE", "TEST", "TESTLAB", "ISSUEDATE" }.Select(file.Label).Where(text => !string.IsNullOrWhiteSpace(text) && text != "not known");
        return string.Join(", ", labels.Append($"file {name}"));
    }
}
