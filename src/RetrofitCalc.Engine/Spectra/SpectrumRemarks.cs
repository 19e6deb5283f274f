namespace RetrofitCalc.Engine.Spectra;

/// <summary>What to know before relying on the figures of a spectrum.</summary>
internal static class SpectrumRemarks
{
    private const double CoarseNm = 5;

    public static IEnumerable<string> Of(SpectrumFigures figures) => [.. OfReach(figures), .. OfRatio(figures), .. OfColour(figures)];

    private static IEnumerable<string> OfReach(SpectrumFigures figures)
    {
        var curve = figures.Spectrum.Curve;
        var reach = FormattableString.Invariant($"The samples reach from {curve.Range.From.Nanometres:0.#} to {curve.Range.To.Nanometres:0.#} nm");
        if (!curve.Covers(PlantBands.Par))
            yield return $"{reach}, not over 400–700 nm: shares of colours, lux per µmol and colour figures are not known.";
        else if (!curve.Covers(PlantBands.Visible))
            yield return $"{reach}: luminous efficacy is not known, and colours count nothing outside them.";
        if (!curve.Covers(PlantBands.FarRed))
            yield return $"{reach}: far red is not known.";
        if (curve.WidestStep(PlantBands.Par) > CoarseNm + 1e-6)
            yield return FormattableString.Invariant($"Samples lie up to {curve.WidestStep(PlantBands.Par):0.#} nm apart, more than the 5 nm CIE sums take: lines of a lamp may be missing.");
    }

    private static IEnumerable<string> OfRatio(SpectrumFigures figures)
    {
        var little = figures.RedFarRed.Where(ratio => ratio.Trust == RatioTrust.TooLittleFarRed).Select(ratio => ratio.Bands.Name).ToList();
        if (little.Count > 0)
            yield return $"So little far red that red to far red ({string.Join("; ", little)}) is very high and unstable: use the far-red fraction.";
    }

    private static IEnumerable<string> OfColour(SpectrumFigures figures)
    {
        if (figures.Colour is not { } colour)
            yield break;
        if (colour.Temperature is null)
            yield return "The colour lies too far from white light for a colour temperature or colour rendering.";
        else if (colour.Rendering is { WithinTolerance: false })
            yield return "The colour lies farther from its reference light than CIE 13.3 allows (5.4e-3): read the colour rendering with caution.";
    }
}
