using System.Text.RegularExpressions;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;

namespace RetrofitCalc.Files.Surveys.Workbooks;

/// <summary>Tells which cell styles show dates: a workbook keeps a date as a day number.</summary>
internal sealed partial class NumberFormats
{
    private readonly List<bool> _showsDate;

    private NumberFormats(List<bool> showsDate, bool from1904) => (_showsDate, From1904) = (showsDate, from1904);

    /// <summary>Days are counted from 1904, not 1900.</summary>
    public bool From1904 { get; }

    public static NumberFormats Of(SpreadsheetDocument book)
    {
        var sheet = book.WorkbookPart!.WorkbookStylesPart?.Stylesheet;
        var own = (sheet?.NumberingFormats?.Elements<NumberingFormat>() ?? [])
            .Where(f => f.NumberFormatId is not null)
            .DistinctBy(f => f.NumberFormatId!.Value)
            .ToDictionary(f => f.NumberFormatId!.Value, f => f.FormatCode?.Value ?? "");
        var styles = (sheet?.CellFormats?.Elements<CellFormat>() ?? []).Select(f => IsDate(f.NumberFormatId?.Value ?? 0, own)).ToList();
        return new NumberFormats(styles, book.WorkbookPart.Workbook?.WorkbookProperties?.Date1904?.Value ?? false);
    }

    public bool ShowsDate(uint style) => style < _showsDate.Count && _showsDate[(int)style];

    /// <summary>Formats 14 to 17 and 22 hold a date (ECMA-376 part 1, 18.8.30); own formats do when they show day, month or year.</summary>
    private static bool IsDate(uint format, Dictionary<uint, string> own) =>
        own.TryGetValue(format, out var code) ? DateLetters().IsMatch(Literals().Replace(code, "")) : format is >= 14 and <= 17 or 22;

    [GeneratedRegex("\"[^\"]*\"|\\[[^\\]]*\\]|\\\\.|_.")]
    private static partial Regex Literals();

    [GeneratedRegex("[dDyY]")]
    private static partial Regex DateLetters();
}
