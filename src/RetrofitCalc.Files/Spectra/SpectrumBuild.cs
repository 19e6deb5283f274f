using System.Globalization;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Spectra;

namespace RetrofitCalc.Files.Spectra;

/// <summary>Makes a spectrum of a table once someone has said which column is which.</summary>
public static class SpectrumBuild
{
    /// <summary>Instruments read a little below zero in the dark. More than this share of the peak is no noise.</summary>
    private const double NoiseBelowZero = 0.01;

    private const double WattsPerMilliwatt = 0.001;

    /// <summary>The spectrum on the watt basis.</summary>
    /// <param name="table">The numbers.</param>
    /// <param name="choice">Which column is which.</param>
    /// <param name="name">What to call it.</param>
    /// <param name="provenance">Where it comes from.</param>
    public static Parsed<ImportedSpectrum> Of(SpectrumTable table, SpectrumChoice choice, string name, Provenance provenance)
    {
        var points = Points(table, choice);
        var notes = table.Notes.ToList();
        if (points.Count < 2) return Parsed.Bad<ImportedSpectrum>("The column has fewer than two values.");
        if (points[0].Sample.At > points[^1].Sample.At)
        {
            points.Reverse();
            notes.Add("Wavelengths fall in the file; they were turned round.");
        }
        return Of(points, choice, notes, curve => new(name, curve, Scale(choice.Unit), provenance));
    }

    /// <summary>A curve that is no spectrum, such as an observer function; it may be negative.</summary>
    internal static SpectralCurve Curve(SpectrumTable table, int column) =>
        new(Points(table, new(0, column, WavelengthUnit.Nanometres, SpectrumUnit.Relative)).Select(point => point.Sample));

    private static Parsed<ImportedSpectrum> Of(List<Point> points, SpectrumChoice choice, List<string> notes, Func<SpectralCurve, SpectralDistribution> make)
    {
        var peak = points.Max(point => point.Sample.Value);
        FileProblem[] problems = [.. OrderProblems(points, choice), .. ValueProblems(points, peak, choice)];
        if (problems.Length > 0) return Parsed.Bad<ImportedSpectrum>(problems);
        var below = points.Count(point => point.Sample.Value < 0);
        if (below > 0) notes.Add($"{below} {(below == 1 ? "value" : "values")} a little below zero, noise of the instrument, {(below == 1 ? "was" : "were")} taken for zero.");
        var samples = points.Select(point => point.Sample with { Value = Math.Max(0, point.Sample.Value) });
        return Parsed.Good(new ImportedSpectrum(make(new(samples)), notes));
    }

    private static List<Point> Points(SpectrumTable table, SpectrumChoice choice) =>
    [
        .. from row in table.Rows
           let at = row.Cells[choice.Wavelength]
           let value = row.Cells[choice.Value]
           where at is not null && value is not null
           let nm = choice.WavelengthUnit == WavelengthUnit.Micrometres ? at.Value * 1000 : at.Value
           select new Point(row.Line, SpectralSample.Of(Math.Max(0, nm), value.Value * Factor(choice.Unit, nm))),
    ];

    private static IEnumerable<FileProblem> OrderProblems(List<Point> points, SpectrumChoice choice)
    {
        for (var i = 0; i < points.Count; i++)
        {
            var nm = points[i].Sample.At.Nanometres;
            if (nm is < SpectrumLimits.ShortestNm or > SpectrumLimits.LongestNm)
            {
                yield return new(points[i].Line, choice.Wavelength + 1, "", Text($"{nm} nm is no wavelength of a lamp. Is it nanometres or micrometres, and is this the column of wavelengths?"));
                yield break;
            }
            if (i == 0 || nm > points[i - 1].Sample.At.Nanometres) continue;
            yield return new(points[i].Line, choice.Wavelength + 1, "", Text($"{nm} nm follows {points[i - 1].Sample.At.Nanometres} nm. Wavelengths must all rise or all fall, each once."));
            yield break;
        }
    }

    private static IEnumerable<FileProblem> ValueProblems(List<Point> points, double peak, SpectrumChoice choice)
    {
        if (peak <= 0)
            yield return new(points[0].Line, choice.Value + 1, "", "All values of the column are zero or less: there is no light in it.");
        else if (points.Find(point => point.Sample.Value < -NoiseBelowZero * peak) is { } negative)
            yield return new(negative.Line, choice.Value + 1, "", "The value is negative, by more than noise. Was a dark reading taken off twice?");
    }

    /// <summary>From the file's unit to watts a nanometre; a photon of shorter wavelength carries more.</summary>
    private static double Factor(SpectrumUnit unit, double nm) => unit switch
    {
        SpectrumUnit.MilliwattsPerNanometre => WattsPerMilliwatt,
        SpectrumUnit.RelativePhotons or SpectrumUnit.MicromolesPerSecondNanometre when nm > 0 => PhotonEnergy.WattNanometresPerMicromole / nm,
        _ => 1,
    };

    private static SpectralScale Scale(SpectrumUnit unit) =>
        unit is SpectrumUnit.Relative or SpectrumUnit.RelativePhotons ? SpectralScale.Relative : SpectralScale.RadiantPower;

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private sealed record Point(int Line, SpectralSample Sample);
}
