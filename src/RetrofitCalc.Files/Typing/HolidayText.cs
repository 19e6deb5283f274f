using System.Globalization;
using System.Text.RegularExpressions;
using NodaTime;
using NodaTime.Text;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Files.Typing;

/// <summary>
/// Holidays as people type them, commas or semicolons between: Jul 4; Jul 4 or Monday (after a Sunday); Jul 4 or nearest weekday;
/// fourth Thursday of November; fourth Thursday of November + 1; Easter - 2; 2027-11-26.
/// </summary>
public static partial class HolidayText
{
    private static readonly string[] Nths = ["first", "second", "third", "fourth", "last"];
    private static readonly string[] Months = CultureInfo.InvariantCulture.DateTimeFormat.MonthNames[..12];

    public static Parsed<IReadOnlyList<Holiday>> ParseList(string? text, CultureInfo culture)
    {
        var read = (text ?? "").Split([',', ';', '\n'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
            .Select(holiday => Parse(holiday, culture)).ToList();
        return read.FirstOrDefault(holiday => !holiday.Ok) is { } wrong
            ? new Parsed<IReadOnlyList<Holiday>>(null, wrong.Problems)
            : Parsed.Good<IReadOnlyList<Holiday>>([.. read.Select(holiday => holiday.Value!).Distinct()]);
    }

    public static string WriteList(IReadOnlyList<Holiday> holidays, CultureInfo culture) =>
        string.Join(", ", holidays.Select(holiday => Write(holiday, date => AnnualDayText.Write(date, culture))));

    public static Parsed<Holiday> Parse(string typed, CultureInfo culture)
    {
        var text = typed.Trim();
        if (LocalDatePattern.Iso.Parse(text) is { Success: true } single) return Parsed.Good<Holiday>(new SingleHoliday(single.Value));
        if (Easter().Match(text) is { Success: true } easter) return Parsed.Good<Holiday>(new EasterHoliday(Offset(easter)));
        if (Weekday().Match(text) is { Success: true } match && OnWeekday(match) is { } weekday) return Parsed.Good<Holiday>(weekday);
        var (day, moves) = Moves(text);
        return AnnualDayText.Parse(day, culture) is { Ok: true, Value: { } date }
            ? Parsed.Good<Holiday>(new FixedHoliday(date, moves))
            : Parsed.Bad<Holiday>($"{CellText.Quote(text)} is not a holiday. Type it like {AnnualDayText.Write(new(7, 4), culture)}, {AnnualDayText.Write(new(7, 4), culture)} or Monday, fourth Thursday of November, Easter + 1, or 2027-11-26.");
    }

    /// <summary>As stored: the same words, dates as 07-04.</summary>
    public static string Stored(Holiday holiday) => Write(holiday, date => $"{date.Month:00}-{date.Day:00}");

    private static string Write(Holiday holiday, Func<AnnualDate, string> day) => holiday switch
    {
        FixedHoliday(var date, WeekendMove.SundayToMonday) => $"{day(date)} or Monday",
        FixedHoliday(var date, WeekendMove.NearestWeekday) => $"{day(date)} or nearest weekday",
        FixedHoliday(var date, _) => day(date),
        WeekdayHoliday h => $"{Nths[h.Nth < 0 ? 4 : h.Nth - 1]} {h.Weekday} of {Months[h.Month - 1]}{Signed(h.DaysAfter)}",
        EasterHoliday(var days) => $"Easter{Signed(days)}",
        SingleHoliday(var date) => LocalDatePattern.Iso.Format(date),
        _ => throw new ArgumentOutOfRangeException(nameof(holiday), holiday, "Unknown kind of holiday."),
    };

    private static string Signed(int days) => days switch { 0 => "", > 0 => $" + {days}", _ => $" - {-days}" };

    private static WeekdayHoliday? OnWeekday(Match match)
    {
        var nth = Array.FindIndex(Nths, word => word.Equals(match.Groups["nth"].Value, StringComparison.OrdinalIgnoreCase));
        if (nth < 0) nth = "1234".IndexOf(match.Groups["nth"].Value[0], StringComparison.Ordinal);
        var month = Array.FindIndex(Months, m => m.StartsWith(match.Groups["month"].Value, StringComparison.OrdinalIgnoreCase)) + 1;
        var known = Enum.TryParse<IsoDayOfWeek>(match.Groups["day"].Value, ignoreCase: true, out var weekday);
        return known && month > 0 && nth >= 0 ? new WeekdayHoliday(nth == 4 ? -1 : nth + 1, weekday, month, Offset(match)) : null;
    }

    private static (string Day, WeekendMove Moves) Moves(string text) => Moving().Match(text) is { Success: true } match
        ? (match.Groups["day"].Value, match.Groups["to"].Value.StartsWith("m", StringComparison.OrdinalIgnoreCase) ? WeekendMove.SundayToMonday : WeekendMove.NearestWeekday)
        : (text, WeekendMove.Stays);

    private static int Offset(Match match) =>
        match.Groups["sign"].Success ? (match.Groups["sign"].Value == "+" ? 1 : -1) * int.Parse(match.Groups["days"].Value, CultureInfo.InvariantCulture) : 0;

    [GeneratedRegex(@"^easter(?:\s*(?<sign>[+-])\s*(?<days>\d{1,2}))?$", RegexOptions.IgnoreCase)]
    private static partial Regex Easter();

    [GeneratedRegex(@"^(?<nth>first|second|third|fourth|last|1st|2nd|3rd|4th)\s+(?<day>[a-z]{6,9})\s+(?:of|in)\s+(?<month>[a-z]{3,9})(?:\s*(?<sign>[+-])\s*(?<days>[0-7]))?$", RegexOptions.IgnoreCase)]
    private static partial Regex Weekday();

    [GeneratedRegex(@"^(?<day>.+?)\s+or\s+(?<to>monday|nearest weekday)$", RegexOptions.IgnoreCase)]
    private static partial Regex Moving();
}
