using System.Globalization;
using NodaTime;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Typing;

namespace RetrofitCalc.Web.Features.Tariffs.Periods;

/// <summary>Months, hours and kinds of day in words.</summary>
public static class HoursText
{
    public static string Month(int month) => CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(month);

    public static string ShortMonth(int month) => CultureInfo.InvariantCulture.DateTimeFormat.GetAbbreviatedMonthName(month);

    public static string Days(DayKind days) => days switch
    {
        DayKind.Weekday => "Mon–Fri",
        DayKind.Weekend => "weekends, holidays",
        _ => "every day",
    };

    /// <summary>"Jun 1 to Sep 30: Mon–Fri 12:00–18:00".</summary>
    public static string Of(TariffHours when, CultureInfo culture, string noWindows)
    {
        var hours = when.Windows.Count == 0
            ? noWindows
            : string.Join("; ", when.Windows.GroupBy(w => w.Days).Select(g => $"{Days(g.Key)} {string.Join(", ", g.Select(Span))}"));
        return $"{TariffText.Dates(when.Start, when.End, culture)}: {hours}";
    }

    private static string Span(TariffWindow window) => $"{ClockText.Write(window.From)}–{(window.To == LocalTime.Midnight ? "24:00" : ClockText.Write(window.To))}";
}
