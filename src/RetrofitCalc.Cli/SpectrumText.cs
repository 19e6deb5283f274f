using System.Globalization;
using RetrofitCalc.Engine.Spectra;

namespace RetrofitCalc.Cli;

/// <summary>What a spectrum tells, a figure to a line, in plain numbers for scripts.</summary>
internal static class SpectrumText
{
    private const string NotKnown = "not known";

    public static string Of(SpectrumFigures figures, IReadOnlyList<string> notes)
    {
        var table = new TextTable();
        void Add(string name, double? value, string format = "0.###", string unit = "") =>
            table.Add(name, [value is { } known ? known.ToString(format, CultureInfo.InvariantCulture) + unit : NotKnown]);
        table.Add(figures.Spectrum.Name, [figures.Spectrum.Scale == SpectralScale.Relative ? "shape only" : "W/nm"]);
        Add("Blue, 400-500 nm, of the photons of 400-700 nm", figures.Fractions?.Blue);
        Add("Green, 500-600 nm", figures.Fractions?.Green);
        Add("Red, 600-700 nm", figures.Fractions?.Red);
        Add("Far red, 700-750 nm, over photons of 400-700 nm", figures.FarRedOverPar);
        Add("Far-red fraction", figures.FarRedFraction);
        foreach (var ratio in figures.RedFarRed)
            table.Add($"Red to far red, {ratio.Bands.Name}", [Ratio(ratio)]);
        Add("Lux of one µmol m⁻² s⁻¹", figures.Lux?.LuxPerMicromole, "0.00");
        Add("Photons of one joule, 400-700 nm", figures.PhotonsPerJoule, "0.000", " µmol/J");
        Add("Luminous efficacy of radiation", figures.LuminousEfficacy, "0.0", " lm/W");
        Add("Colour temperature", figures.Colour?.Temperature?.Kelvins, "0", " K");
        Add("Distance from the black-body line", figures.Colour?.Temperature?.DistanceFromLocus, "0.0000");
        AddRendering(table, figures.Colour?.Rendering);
        if (figures.Photons is { } photons) Add("Photons", photons.MicromolesPerSecond, "0.0", " µmol/s");
        if (figures.Light is { } light) Add("Light", light.Lumens, "0", " lm");
        return string.Join(Environment.NewLine, [table.ToString().TrimEnd(), .. notes.Concat(figures.Remarks).Select(remark => $"Note: {remark}")]);
    }

    private static void AddRendering(TextTable table, ColourRendering? rendering)
    {
        string Index(double? index) => index is { } known ? known.ToString("0.0", CultureInfo.InvariantCulture) : NotKnown;
        table.Add("Colour rendering Ra", [Index(rendering?.General) + (rendering is { WithinTolerance: false } ? ", with caution" : "")]);
        foreach (var (i, special) in (rendering?.Special ?? []).Index())
            table.Add($"  R{i + 1}", [Index(special)]);
    }

    private static string Ratio(RedFarRedRatio ratio) => ratio.Trust switch
    {
        RatioTrust.NotCovered => "not known, samples end",
        RatioTrust.TooLittleFarRed => "very high, unstable",
        RatioTrust.TooCoarse => $"about {ratio.Value?.ToString("0.0", CultureInfo.InvariantCulture)}, samples too far apart",
        _ => ratio.Value?.ToString("0.00", CultureInfo.InvariantCulture) ?? NotKnown,
    };
}
