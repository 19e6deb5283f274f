using RetrofitCalc.Engine.Spectra;

namespace RetrofitCalc.Reports;

/// <summary>Spectra of the lamps in use and of those proposed.</summary>
internal static class LightSpectra
{
    public static IEnumerable<ReportSection> Of(SummaryContext context)
    {
        if (context.Request.Spectra.Count == 0) yield break;
        yield return new ReportSection("Spectra of the lamps",
            ["Shares are of photons. Far red, 700 to 750 nm, stands here as context beside light of 400 to 700 nm: it is in no light, saving or verdict. The same lux of two lamps is not the same light for a crop."],
            [new ReportTable("",
                [
                    new("Lamp, tube or luminaire", 2.2), new("Blue", 0.7, true), new("Green", 0.7, true), new("Red", 0.7, true), new("Far red over PAR", 0.9, true),
                    new("lx per µmol", 0.8, true), new("Colour temperature, K", 1.4, true), new("Ra", 0.6, true), new("Spectrum and source", 2.6),
                ],
                [.. context.Request.Spectra.Select(product => Row(product, context.Text))])]);
    }

    private static ReportRow Row(ProductSpectrum product, QuantityText text)
    {
        if (product.Figures is not { } figures)
            return new([product.Name, .. Enumerable.Repeat(QuantityText.NotKnown, 7), "no spectrum chosen: ask the maker for one"]);
        string Share(double? share) => share is { } known ? text.Percent(known) : QuantityText.NotKnown;
        var colour = figures.Colour;
        return new([product.Name,
            Share(figures.Fractions?.Blue), Share(figures.Fractions?.Green), Share(figures.Fractions?.Red), Share(figures.FarRedOverPar),
            figures.Lux is { } lux ? text.Number(lux.LuxPerMicromole, 1) : QuantityText.NotKnown,
            colour?.Temperature is { } kelvin ? text.Number(Math.Round(kelvin.Kelvins / 10) * 10) : QuantityText.NotKnown,
            colour?.Rendering is { } rendering ? text.Number(rendering.General) + (rendering.WithinTolerance ? "" : ", out of tolerance") : QuantityText.NotKnown,
            $"{figures.Spectrum.Name}: {SourceWords.Full(figures.Spectrum.Provenance)}"]);
    }
}
