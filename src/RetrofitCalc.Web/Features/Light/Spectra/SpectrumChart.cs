using RetrofitCalc.Engine.Spectra;
using RetrofitCalc.Reports;
using RetrofitCalc.Web.Charts;

namespace RetrofitCalc.Web.Features.Light.Spectra;

/// <summary>One spectrum, or two side by side, each with as many photons of 400–700 nm.</summary>
public static class SpectrumChart
{
    private const double FirstNm = 380, LastNm = 780, TwinStepNm = 20, Full = 100;
    private static readonly Ink[] Inks = [Ink.NowCurve, Ink.ProposedCurve];

    public static ChartFigure Of(IReadOnlyList<SpectrumFigures> spectra, bool photons, QuantityText text)
    {
        var curves = spectra.Select(figures => Curve.Of(figures, photons)).ToList();
        var highest = curves.Max(curve => curve.Peak);
        var basis = photons ? "photons" : "watts";
        return new ChartFigure(
            Finding(spectra, text),
            $"{(photons ? "Photons" : "Watts")} per nanometre over wavelength; {(spectra.Count > 1 ? "both scaled to the same number of photons of 400–700 nm, " : "")}the highest point is 100.",
            $"Spectrum in {basis}. {Finding(spectra, text)}. Means of every {TwinStepNm} nm in the table below.",
            Spec(curves, highest), Twin(curves, highest, text))
        {
            Legend = [.. spectra.Select((figures, i) => new ChartKey(Inks[i], figures.Spectrum.Name))],
        };
    }

    /// <summary>The band in which they differ most, or the shares of the one.</summary>
    private static string Finding(IReadOnlyList<SpectrumFigures> spectra, QuantityText text)
    {
        var (first, last) = (spectra[0], spectra[^1]);
        if (first.Fractions is not { } a || last.Fractions is not { } b) return $"{string.Join(" and ", spectra.Select(f => f.Spectrum.Name))}: shares of colours not known";
        if (spectra.Count == 1) return $"{first.Spectrum.Name}: {text.Percent(a.Blue)} of its photons are blue, {text.Percent(a.Green)} green, {text.Percent(a.Red)} red";
        var (band, was, becomes) = new[] { ("blue", a.Blue, b.Blue), ("green", a.Green, b.Green), ("red", a.Red, b.Red) }.MaxBy(x => Math.Abs(x.Item3 - x.Item2));
        return Math.Abs(becomes - was) < 0.01
            ? $"{first.Spectrum.Name} and {last.Spectrum.Name} share their photons alike among blue, green and red"
            : $"{last.Spectrum.Name} has {(becomes > was ? "more" : "less")} {band} than {first.Spectrum.Name}: {text.Percent(becomes)} of its photons against {text.Percent(was)}";
    }

    private static ChartSpec Spec(IReadOnlyList<Curve> curves, double highest) => new(
        ChartKind.Line, [.. curves.Select((curve, i) => new ChartSeries(curve.Name, Inks[i], [.. curve.Points.Select(p => new ChartPoint(p.Nm, p.Value / highest * Full))]))])
    {
        Across = new(FirstNm, LastNm, [.. new[] { 400, 450, 500, 550, 600, 650, 700, 750 }.Select(nm => new ChartTick(nm, [$"{nm}"]))], "wavelength, nm"),
        Up = new(0, Full, [.. new[] { 0, 25, 50, 75, 100 }.Select(at => new ChartTick(at, [$"{at}"]))]),
    };

    private static ChartTable Twin(IReadOnlyList<Curve> curves, double highest, QuantityText text) => new(
        ["Wavelength, nm", .. curves.Select(curve => curve.Name)],
        [.. Enumerable.Range(0, (int)((LastNm - FirstNm) / TwinStepNm)).Select(i => FirstNm + i * TwinStepNm).Select(nm => (IReadOnlyList<string>)
            [$"{nm}–{nm + TwinStepNm}", .. curves.Select(curve => curve.Mean(nm, nm + TwinStepNm) is { } mean ? text.Number(mean / highest * Full, 1) : QuantityText.NotKnown)])]);

    /// <summary>A spectrum over the drawn wavelengths, scaled.</summary>
    private sealed record Curve(string Name, IReadOnlyList<(double Nm, double Value)> Points, Func<double, double, double?> Mean)
    {
        public double Peak => Points.Max(point => point.Value);

        public static Curve Of(SpectrumFigures figures, bool photons)
        {
            var spectrum = figures.Spectrum;
            var scale = figures.Fractions is not null ? spectrum.Photons(PlantBands.Par) : spectrum.Curve.Samples.Max(sample => sample.Value);
            var samples = photons ? spectrum.PhotonSamples : spectrum.Curve.Samples;
            return new(
                spectrum.Name,
                [.. samples.Where(sample => sample.At.Nanometres is >= FirstNm and <= LastNm).Select(sample => (sample.At.Nanometres, sample.Value / scale)).DefaultIfEmpty((FirstNm, 1e-9))],
                (from, to) => SpectralBand.OfNanometres(from, to) is var band && spectrum.Curve.Covers(band)
                    ? (photons ? spectrum.Photons(band) : spectrum.Radiation(band)) / scale / band.WidthNanometres
                    : null);
        }
    }
}
