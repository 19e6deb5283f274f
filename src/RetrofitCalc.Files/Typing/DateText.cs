using System.Globalization;
using System.Text.RegularExpressions;
using NodaTime;
using NodaTime.Text;

namespace RetrofitCalc.Files.Typing;

/// <summary>Dates as people type them: ISO everywhere, or the short form of their culture.</summary>
public static partial class DateText
{
    private static readonly LocalDate Earliest = new(1900, 1, 1);
    private static readonly LocalDate Latest = new(2199, 12, 31);

    /// <summary>The date; null for a blank text.</summary>
    public static Parsed<LocalDate?> Parse(string? text, CultureInfo culture)
    {
        var typed = (text ?? "").Trim();
        if (typed.Length == 0) return Parsed.Good<LocalDate?>(null);
        var own = OwnPattern(culture);
        var found = new[] { LocalDatePattern.Iso, own }.Select(p => p.Parse(typed)).FirstOrDefault(r => r.Success);
        if (found is null) return Parsed.Bad<LocalDate?>($"{CellText.Quote(typed)} is not a date. Type it like 2027-03-15 or {own.Format(new(2027, 3, 15))}.");
        return found.Value >= Earliest && found.Value <= Latest
            ? Parsed.Good<LocalDate?>(found.Value)
            : Parsed.Bad<LocalDate?>($"{CellText.Quote(typed)} is not a likely date; the year must be 1900 to 2199.");
    }

    public static string Write(LocalDate date) => LocalDatePattern.Iso.Format(date);

    /// <summary>The culture's short form, with leading zeros or without, always with a four-digit year: 27 could be any century.</summary>
    private static LocalDatePattern OwnPattern(CultureInfo culture)
    {
        var form = YearLetters().Replace(culture.DateTimeFormat.ShortDatePattern, "yyyy");
        return LocalDatePattern.Create(DayOrMonthDigits().Replace(form, "$1"), culture);
    }

    [GeneratedRegex("y+")]
    private static partial Regex YearLetters();

    [GeneratedRegex("(?<![dM])([dM])\\1(?!\\1)")]
    private static partial Regex DayOrMonthDigits();
}
