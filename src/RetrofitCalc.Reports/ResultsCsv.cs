using System.Globalization;
using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Reports;

/// <summary>Results as one long table: figure, unit, now, then each option. Numbers with a point and unrounded, for other programs.</summary>
public static class ResultsCsv
{
    /// <summary>Writes the table; comma separated, quoted where needed, lines ended as RFC 4180 says.</summary>
    public static void Write(StudyResult result, TextWriter output)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(output);
        Line(output, ["figure", "unit", result.Now.Name, .. result.Options.Select(option => option.Option.Name)]);
        foreach (var figure in CsvFigures.Of(result))
            Line(output, [figure.Name, figure.Unit, Number(figure.Now), .. figure.Options.Select(Number)]);
    }

    private static string Number(double? value) => value?.ToString("R", CultureInfo.InvariantCulture) ?? "";

    private static void Line(TextWriter output, IEnumerable<string> cells)
    {
        output.Write(string.Join(",", cells.Select(Cell)));
        output.Write("\r\n");
    }

    private static string Cell(string text)
    {
        var guarded = double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out _) ? text : FormulaGuard.Text(text);
        return guarded.AsSpan().IndexOfAny("\",\r\n") < 0 ? guarded : "\"" + guarded.Replace("\"", "\"\"", StringComparison.Ordinal) + "\"";
    }
}
