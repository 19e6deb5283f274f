using System.Globalization;
using System.Text.RegularExpressions;
using NodaTime;

namespace RetrofitCalc.Files.Typing;

/// <summary>Times of day as people type them: 6, 6:00, 18:30, 1830, 6 pm, 6:30 pm, noon, midnight.</summary>
public static partial class ClockText
{
    /// <summary>The time; null for a blank text. 24:00 is midnight.</summary>
    public static Parsed<LocalTime?> Parse(string? text)
    {
        var typed = (text ?? "").Trim();
        if (typed.Length == 0) return Parsed.Good<LocalTime?>(null);
        if (typed.Equals("noon", StringComparison.OrdinalIgnoreCase)) return Parsed.Good<LocalTime?>(LocalTime.Noon);
        if (typed.Equals("midnight", StringComparison.OrdinalIgnoreCase)) return Parsed.Good<LocalTime?>(LocalTime.Midnight);
        var match = Clock().Match(typed);
        return match.Success && Time(match) is { } time
            ? Parsed.Good<LocalTime?>(time)
            : Parsed.Bad<LocalTime?>($"{CellText.Quote(typed)} is not a time of day. Type it like 6:00, 18:30 or 6:30 pm.");
    }

    public static string Write(LocalTime time) => time.ToString(time.Second == 0 ? "HH:mm" : "HH:mm:ss", CultureInfo.InvariantCulture);

    private static LocalTime? Time(Match match)
    {
        var hour = Number(match.Groups["hour"].Value);
        var minute = Number(match.Groups["minute"].Value);
        var half = match.Groups["half"].Value.ToLowerInvariant();
        if (minute > 59 || (half.Length > 0 && hour is 0 or > 12)) return null;
        if (half.Length > 0) hour = (hour % 12) + (half[0] == 'p' ? 12 : 0);
        return (hour, minute) switch
        {
            (24, 0) => LocalTime.Midnight,
            ( > 23, _) => null,
            _ => new LocalTime(hour, minute),
        };
    }

    private static int Number(string digits) => digits.Length == 0 ? 0 : int.Parse(digits, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^(?<hour>\d{1,2})(?:[:.h]?(?<minute>\d{2}))?\s*(?<half>[ap]\.?m\.?)?$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Clock();
}
