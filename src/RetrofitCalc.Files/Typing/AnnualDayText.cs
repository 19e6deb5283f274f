using System.Globalization;
using System.Text.RegularExpressions;
using NodaTime;

namespace RetrofitCalc.Files.Typing;

/// <summary>Days of every year as people type them: Mar 15, 15 March, 03-15, or month and day in the order of their culture.</summary>
public static partial class AnnualDayText
{
    private static readonly string[] Months = CultureInfo.InvariantCulture.DateTimeFormat.MonthNames[..12];

    /// <summary>The day; null for a blank text.</summary>
    public static Parsed<AnnualDate?> Parse(string? text, CultureInfo culture)
    {
        var typed = (text ?? "").Trim();
        if (typed.Length == 0) return Parsed.Good<AnnualDate?>(null);
        if (MonthAndDay(typed, culture) is var (month, day) && month is >= 1 and <= 12 && day >= 1 && day <= LongestMonth(month))
            return Parsed.Good<AnnualDate?>(new AnnualDate(month, day));
        var example = Write(new(3, 15), culture);
        return Parsed.Bad<AnnualDate?>($"{CellText.Quote(typed)} is not a day of the year. Type it like {example} or 03-15.");
    }

    /// <summary>"Mar 15" where the culture puts the month first, else "15 Mar".</summary>
    public static string Write(AnnualDate date, CultureInfo culture)
    {
        var month = Months[date.Month - 1][..3];
        return MonthFirst(culture) ? $"{month} {date.Day}" : $"{date.Day} {month}";
    }

    private static int LongestMonth(int month) => DateTime.DaysInMonth(2028, month);

    private static bool MonthFirst(CultureInfo culture)
    {
        var pattern = culture.DateTimeFormat.MonthDayPattern;
        return pattern.IndexOf('M', StringComparison.Ordinal) < pattern.IndexOf('d', StringComparison.Ordinal);
    }

    private static (int Month, int Day)? MonthAndDay(string typed, CultureInfo culture)
    {
        if (Named().Match(typed) is { Success: true } named)
        {
            var word = named.Groups["month"].Value;
            var month = Array.FindIndex(Months, m => m.StartsWith(word, StringComparison.OrdinalIgnoreCase)) + 1;
            return (month, Number(named.Groups["day"].Value));
        }
        if (Figures().Match(typed) is not { Success: true } figures) return null;
        var (first, second) = (Number(figures.Groups[1].Value), Number(figures.Groups[3].Value));
        return figures.Groups[2].Value == "-" || MonthFirst(culture) ? (first, second) : (second, first);
    }

    private static int Number(string digits) => int.Parse(digits, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^(?:(?<month>[A-Za-z]{3,9})\.?\s*(?<day>\d{1,2})|(?<day>\d{1,2})\.?\s*(?<month>[A-Za-z]{3,9})\.?)$")]
    private static partial Regex Named();

    [GeneratedRegex(@"^(\d{1,2})\s*([-/.])\s*(\d{1,2})\.?$")]
    private static partial Regex Figures();
}
