using RetrofitCalc.Engine.Spectra;
using RetrofitCalc.Reports;

namespace RetrofitCalc.Web.Features.Light.Spectra;

/// <summary>All figures of spectra, side by side.</summary>
public static class SpectrumSheet
{
    public static ReportTable Of(IReadOnlyList<SpectrumFigures> spectra, QuantityText text) =>
        Table("Figures of the spectra", spectra, [.. OfPlants(text), .. OfMeters(text), .. OfPeople(text), .. OfAmounts(text)]);

    /// <summary>R1 to R14 of CIE 13.3.</summary>
    public static ReportTable TestColours(IReadOnlyList<SpectrumFigures> spectra, QuantityText text) => Table(
        "Special colour rendering indices", spectra,
        [.. Enumerable.Range(0, ColorimetricTables.TestColourCount).Select(i => new Line($"R{i + 1}", f => Rendering(f, r => r.Special[i], text)))]);

    private static IEnumerable<Line> OfPlants(QuantityText text) =>
    [
        new("Blue, 400–500 nm, of the photons of 400–700 nm", f => Percent(text, f.Fractions?.Blue)),
        new("Green, 500–600 nm", f => Percent(text, f.Fractions?.Green)),
        new("Red, 600–700 nm", f => Percent(text, f.Fractions?.Red)),
        new("Far red, 700–750 nm, beside these; context only", f => Percent(text, f.FarRedOverPar, 1)),
        new("Far-red fraction: far red over red and far red", f => Number(text, f.FarRedFraction, 3)),
        .. RedFarRedBands.All.Select((bands, i) => new Line(Name(bands), f => Ratio(f.RedFarRed[i], text))),
    ];

    private static IEnumerable<Line> OfMeters(QuantityText text) =>
    [
        new("Lux of one µmol/m²·s", f => Number(text, f.Lux?.LuxPerMicromole, 1)),
        new("Foot-candles of one µmol/m²·s", f => Number(text, f.Lux?.FootCandlesPerMicromole, 2)),
        new("Photons of one joule, both of 400–700 nm, µmol", f => Number(text, f.PhotonsPerJoule, 2)),
        new("Luminous efficacy of radiation, lm/W", f => Number(text, f.LuminousEfficacy)),
    ];

    private static IEnumerable<Line> OfPeople(QuantityText text) =>
    [
        new("Colour temperature, K; for people", f => Number(text, f.Colour?.Temperature?.Kelvins)),
        new("Distance from the black-body line, above it greenish", f => Number(text, f.Colour?.Temperature?.DistanceFromLocus, 4)),
        new("Colour rendering Ra; for people", f => Rendering(f, r => r.General, text)),
    ];

    private static IEnumerable<Line> OfAmounts(QuantityText text) =>
    [
        new("Light of one lamp, lm", f => Amount(f, text, f.Light?.Lumens)),
        new("Photons of one lamp, µmol/s", f => Amount(f, text, f.Photons?.MicromolesPerSecond)),
    ];

    private static ReportTable Table(string caption, IReadOnlyList<SpectrumFigures> spectra, IReadOnlyList<Line> lines) => new(
        caption, [new("Figure"), .. spectra.Select(f => new ReportColumn(f.Spectrum.Name, Numeric: true))],
        [.. lines.Select(line => new ReportRow([line.Head, .. spectra.Select(line.Cell)]))]);

    private static string Name(RedFarRedBands bands) =>
        FormattableString.Invariant($"Red to far red, {bands.Name}: {bands.Red.From.Nanometres}–{bands.Red.To.Nanometres} over {bands.FarRed.From.Nanometres}–{bands.FarRed.To.Nanometres} nm");

    private static string Ratio(RedFarRedRatio ratio, QuantityText text) => ratio.Trust switch
    {
        RatioTrust.NotCovered => "not known, samples end",
        RatioTrust.TooLittleFarRed => "very high, unstable",
        RatioTrust.TooCoarse => $"about {text.Number(ratio.Value ?? 0, 1)}, samples too far apart",
        _ => Number(text, ratio.Value, 2),
    };

    private static string Rendering(SpectrumFigures figures, Func<ColourRendering, double> index, QuantityText text) =>
        figures.Colour?.Rendering is { } rendering ? text.Number(index(rendering)) + (rendering.WithinTolerance ? "" : ", with caution") : QuantityText.NotKnown;

    private static string Amount(SpectrumFigures figures, QuantityText text, double? value) =>
        figures.Spectrum.Scale == SpectralScale.Relative ? "shape only" : Number(text, value, 1);

    private static string Percent(QuantityText text, double? share, int decimals = 0) => share is { } known ? text.Percent(known, decimals) : QuantityText.NotKnown;

    private static string Number(QuantityText text, double? value, int decimals = 0) => value is { } known ? text.Number(known, decimals) : QuantityText.NotKnown;

    private sealed record Line(string Head, Func<SpectrumFigures, string> Cell);
}
