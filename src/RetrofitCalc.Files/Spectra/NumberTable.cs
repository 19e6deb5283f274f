using System.Globalization;
using CsvHelper;

namespace RetrofitCalc.Files.Spectra;

/// <summary>A text of rows parted by one mark, its numbers written with one decimal mark.</summary>
internal sealed class NumberTable
{
    /// <summary>Lines of numbers and of text around them.</summary>
    public const int MostRows = 2 * SpectrumLimits.Samples;

    private const int LongestRecordBytes = 64 * 1024;
    private static readonly (char Separator, char Decimal)[] Ways =
        [(';', ','), (';', '.'), ('\t', ','), ('\t', '.'), (',', '.'), ('|', '.'), (' ', ','), (' ', '.')];

    private readonly char _decimal;

    private NumberTable(string text, char separator, char decimalMark)
    {
        _decimal = decimalMark;
        Rows = [.. Split(text, separator).Take(MostRows + 1)];
        DataRows = Rows.Count(row => IsData(row.Cells));
    }

    public IReadOnlyList<(int Line, string[] Cells)> Rows { get; }

    private int DataRows { get; }

    /// <summary>The way of reading that finds most rows of numbers; among equals the first.</summary>
    public static NumberTable Of(string text) =>
        Ways.Select(way => new NumberTable(text, way.Separator, way.Decimal)).MaxBy(table => table.DataRows)!;

    /// <summary>Whether a row begins with a number and has another cell beside it.</summary>
    public bool StartsWithNumber(string[] cells) => cells.Length > 1 && Number(cells[0]) is not null && cells.Skip(1).Any(cell => cell.Length > 0);

    public double? Number(string cell)
    {
        if (_decimal == ',' && cell.Contains('.'))
            return null;
        return double.TryParse(cell.Replace(_decimal, '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number)
            ? number
            : null;
    }

    private bool IsData(string[] cells) => StartsWithNumber(cells) && cells.All(cell => cell.Length == 0 || Number(cell) is not null);

    private static IEnumerable<(int, string[])> Split(string text, char separator)
    {
        using var csv = CsvReader.Create(new StringReader(text), new CsvReaderOptions
        {
            Separator = separator,
            HasHeader = false,
            TrackLineNumbers = true,
            MaxRecordSize = LongestRecordBytes,
            OnMalformedRecord = static _ => { },
        });
        while (Next(csv))
        {
            var cells = Enumerable.Range(0, Math.Min(csv.FieldCount, SpectrumLimits.Columns + 1)).Select(i => csv.GetString(i).Trim());
            string[] kept = [.. separator == ' ' ? cells.Where(cell => cell.Length > 0) : cells];
            if (kept.Any(cell => cell.Length > 0))
                yield return ((int)csv.LineNumber, kept);
        }
    }

    /// <summary>A record too long for a spectrum ends the reading in this way; another way may still do.</summary>
    private static bool Next(CsvReader csv)
    {
        try
        {
            return csv.Read();
        }
        catch (CsvFormatException)
        {
            return false;
        }
    }
}
