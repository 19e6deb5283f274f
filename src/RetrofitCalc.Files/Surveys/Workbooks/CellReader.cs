using System.Globalization;
using DocumentFormat.OpenXml.Spreadsheet;
using RetrofitCalc.Files.Typing;

namespace RetrofitCalc.Files.Surveys.Workbooks;

/// <summary>Gives a workbook cell the text its user would have typed.</summary>
internal sealed class CellReader(IReadOnlyList<string> words, NumberFormats formats, CultureInfo culture)
{
    private const double DaysOf1904 = 1462;
    private const double LastDay = 2_958_465;
    private const int SecondsOfDay = 86_400;

    /// <summary>Whether the time of day is kept beside a date.</summary>
    public bool WithTimes { get; init; }

    public string TextOf(Cell cell)
    {
        var raw = cell.CellValue?.Text ?? "";
        var kind = cell.DataType?.Value;
        if (kind == CellValues.InlineString) return cell.InlineString is { } inline ? SharedWords.TextOf(inline) : "";
        if (kind == CellValues.SharedString) return int.TryParse(raw, CultureInfo.InvariantCulture, out var at) && at >= 0 && at < words.Count ? words[at] : "";
        if (kind == CellValues.Boolean) return raw == "1" ? "yes" : raw == "0" ? "no" : raw;
        if (kind == CellValues.Date) return WithTimes ? raw : raw.Split('T')[0];
        return kind is null || kind == CellValues.Number ? Number(raw, cell.StyleIndex?.Value ?? 0) : raw;
    }

    private string Number(string raw, uint style)
    {
        if (!double.TryParse(raw, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) || !double.IsFinite(value)) return raw;
        if (!formats.ShowsDate(style)) return NumberText.Write(AsShown(value), culture);
        var days = value + (formats.From1904 ? DaysOf1904 : 0);
        if (days is not (>= 1 and <= LastDay)) return NumberText.Write(value, culture);
        var second = DateTime.FromOADate(Math.Floor(days)).AddSeconds(WithTimes ? Math.Round(days % 1 * SecondsOfDay) : 0);
        return second.ToString(second.TimeOfDay == TimeSpan.Zero ? "yyyy-MM-dd" : "yyyy-MM-dd HH:mm:ss", CultureInfo.InvariantCulture);
    }

    /// <summary>Workbooks store 0.1 + 0.2 with 17 digits and show 15.</summary>
    private static double AsShown(double value) => double.Parse(value.ToString("G15", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
