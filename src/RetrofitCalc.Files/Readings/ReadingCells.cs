using System.Globalization;
using RetrofitCalc.Files.Surveys;
using RetrofitCalc.Files.Surveys.Tables;

namespace RetrofitCalc.Files.Readings;

/// <summary>Parts a pasted text into cells: by tabs as spreadsheets copy them, else by semicolons, bars, commas or spaces.</summary>
internal static class ReadingCells
{
    /// <summary>More than any bench is read at; the study takes no more.</summary>
    public const int Most = 10_000;

    private const int MostCharacters = 1_000_000;

    /// <summary>Rows with the line of the text each stands on, all as long as the longest. Lines with nothing at all are left out.</summary>
    public static Parsed<IReadOnlyList<(int Line, string[] Cells)>> Of(string text, CultureInfo culture)
    {
        if (text.Length > MostCharacters) return TooMany();
        var split = Splitter(text, culture);
        var rows = text.ReplaceLineEndings("\n").Split('\n').Index()
            .Where(line => line.Item.Length > 0 && (line.Item.Contains('\t') || !string.IsNullOrWhiteSpace(line.Item)))
            .Select(line => (Line: line.Index + 1, Cells: split(line.Item).Select(cell => SpreadsheetText.Unguard(Bare(cell))).ToArray())).ToList();
        while (rows.Count > 0 && rows[^1].Cells.All(cell => cell.Length == 0)) rows.RemoveAt(rows.Count - 1);
        if (rows.Count == 0) return Parsed.Bad<IReadOnlyList<(int, string[])>>("There are no readings in this text.");
        var width = rows.Max(row => Used(row.Cells));
        if (width > TableLimits.Columns || (long)width * rows.Count > Most) return TooMany();
        return Parsed.Good<IReadOnlyList<(int, string[])>>([.. rows.Select(row => (row.Line, Padded(row.Cells, width)))]);
    }

    private static Parsed<IReadOnlyList<(int, string[])>> TooMany() => Parsed.Bad<IReadOnlyList<(int, string[])>>(
        FormattableString.Invariant($"This text holds more than {Most:N0} readings or {TableLimits.Columns} columns. Nothing was read. Paste the grid of one bench."));

    private static Func<string, string[]> Splitter(string text, CultureInfo culture)
    {
        if (text.Contains('\t')) return line => line.Split('\t');
        foreach (var mark in new[] { ';', '|' })
            if (text.Contains(mark)) return line => line.Split(mark);
        if (text.Contains(',') && culture.NumberFormat.NumberDecimalSeparator != ",") return line => line.Split(',');
        return line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries);
    }

    private static string Bare(string cell)
    {
        var trimmed = cell.Trim();
        return trimmed.Length > 1 && trimmed[0] == '"' && trimmed[^1] == '"' ? trimmed[1..^1].Replace("\"\"", "\"").Trim() : trimmed;
    }

    private static int Used(string[] cells) => Array.FindLastIndex(cells, cell => cell.Length > 0) + 1;

    private static string[] Padded(string[] cells, int width) => [.. cells.Take(width), .. Enumerable.Repeat("", Math.Max(0, width - cells.Length))];
}
