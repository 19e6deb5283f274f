using System.Globalization;
using System.Text;
using CsvHelper;
using RetrofitCalc.Engine.Spectra;
using RetrofitCalc.Files.Surveys;
using RetrofitCalc.Files.Surveys.Tables;
using RetrofitCalc.Files.Typing;

namespace RetrofitCalc.Files.Spectra;

/// <summary>
/// Spectra as text tables: wavelength and one or more columns of values, with comma, semicolon, tab, bar or spaces between them,
/// point or comma as decimal mark, with or without headings and lines of an instrument above and below.
/// </summary>
public static class SpectrumCsv
{
    /// <summary>Reads the table; nothing in it is taken for anything yet.</summary>
    public static Parsed<SpectrumTable> Read(Stream stream)
    {
        try
        {
            var bytes = BoundedRead.All(stream, SpectrumLimits.FileBytes);
            if (bytes is null) return Parsed.Bad<SpectrumTable>(SpectrumLimits.TooLarge);
            if (bytes.Length == 0) return Parsed.Bad<SpectrumTable>("The file is empty.");
            var (encoding, mark, _) = TextEncoding.Of(bytes, whole: true);
            return encoding is null
                ? Parsed.Bad<SpectrumTable>("This is not a text file. Save the spectrum as CSV in UTF-8 and try again.")
                : Table(NumberTable.Of(encoding.GetString(bytes.AsSpan(mark))));
        }
        catch (Exception unreadable) when (unreadable is IOException or DecoderFallbackException)
        {
            return Parsed.Bad<SpectrumTable>($"The file could not be read: {unreadable.Message}");
        }
    }

    /// <summary>Writes a spectrum with its source; it reads back as the same numbers.</summary>
    public static byte[] Write(SpectralDistribution spectrum, CultureInfo culture)
    {
        using var file = new MemoryStream();
        using (var csv = CsvWriter.Create(file, SurveyCsv.Settings(culture), leaveOpen: true))
        {
            csv.WriteRecord(["Source", SpreadsheetText.Guard(spectrum.Provenance.Source)]);
            csv.WriteRecord(["Wavelength (nm)", SpreadsheetText.Guard($"{spectrum.Name} ({(spectrum.Scale == SpectralScale.Relative ? "relative" : "W/nm")})")]);
            foreach (var sample in spectrum.Curve.Samples)
                csv.WriteRecord([NumberText.Write(sample.At.Nanometres, culture), NumberText.Write(sample.Value, culture)]);
        }
        return file.ToArray();
    }

    private static Parsed<SpectrumTable> Table(NumberTable table)
    {
        var rows = table.Rows;
        var first = rows.TakeWhile(row => !table.StartsWithNumber(row.Cells)).Count();
        var last = rows.Count - rows.Reverse().TakeWhile(row => !table.StartsWithNumber(row.Cells)).Count();
        if (last - first < 2)
            return Parsed.Bad<SpectrumTable>("No rows of numbers were found. A spectrum needs a wavelength and a value in each row, two rows at least.");
        if (rows.Count > NumberTable.MostRows || last - first > SpectrumLimits.Samples) return Parsed.Bad<SpectrumTable>(SpectrumLimits.TooManySamples);
        var width = rows.Take(first..last).Max(row => row.Cells.Length);
        if (width > SpectrumLimits.Columns) return Parsed.Bad<SpectrumTable>(SpectrumLimits.TooManyColumns);
        var problems = new List<FileProblem>();
        SpectrumRow[] numbers = [.. rows.Take(first..last).Select(row => Numbers(row.Line, row.Cells, width, table, problems))];
        return problems.Count > 0
            ? new(null, problems)
            : Parsed.Good(new SpectrumTable(Headings(rows.Take(first), width), numbers, Notes(first, rows.Count - last, width, rows.Take(first))));
    }

    private static SpectrumRow Numbers(int line, string[] cells, int width, NumberTable table, List<FileProblem> problems)
    {
        var numbers = new double?[width];
        for (var i = 0; i < cells.Length; i++)
        {
            numbers[i] = table.Number(cells[i]);
            if (cells[i].Length > 0 && numbers[i] is null && problems.Count < MostProblems)
                problems.Add(new(line, i + 1, "", $"{CellText.Quote(cells[i])} is not a number."));
        }
        return new(line, numbers);
    }

    private const int MostProblems = 100;

    private static bool AreHeadings((int Line, string[] Cells) row, int width) => row.Cells.Length == width;

    private static string[] Headings(IEnumerable<(int Line, string[] Cells)> above, int width) =>
        above.LastOrDefault() is { Cells: not null } row && AreHeadings(row, width)
            ? [.. row.Cells.Select(SpreadsheetText.Unguard)]
            : [.. Enumerable.Range(1, width).Select(column => $"Column {column}")];

    private static List<string> Notes(int above, int below, int width, IEnumerable<(int Line, string[] Cells)> rowsAbove)
    {
        var headings = above > 0 && AreHeadings(rowsAbove.Last(), width);
        var notes = new List<string>();
        if (!headings) notes.Add("The table has no headings: say which column is which, and in what unit.");
        var skipped = above - (headings ? 1 : 0) + below;
        if (skipped > 0) notes.Add($"{skipped} {(skipped == 1 ? "line" : "lines")} of text above or below the numbers {(skipped == 1 ? "was" : "were")} not used.");
        return notes;
    }
}
