using System.Globalization;
using NodaTime;
using NodaTime.Text;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Reports;

/// <summary>Days and hours of a tariff in words.</summary>
internal static class TariffTimes
{
    /// <param name="when">Days and hours.</param>
    /// <param name="rest">What no windows mean: all hours, or all that other charges leave.</param>
    public static string When(TariffHours when, string rest = "all hours")
    {
        var dates = when is { Start: { } start, End: { } end } ? $"{Day(start)} – {Day(end)}" : "all year";
        return when.Windows.Count == 0 ? $"{dates}, {rest}" : $"{dates}, {string.Join("; ", when.Windows.Select(Window))}";
    }

    /// <summary>", of Jun, Jul" or nothing for all months.</summary>
    public static string Months(IReadOnlyList<int> months) =>
        months.Count == 0 ? "" : ", of " + string.Join(", ", months.Select(CultureInfo.InvariantCulture.DateTimeFormat.GetAbbreviatedMonthName));

    public static string Day(AnnualDate day) => AnnualDatePattern.CreateWithInvariantCulture("d MMM").Format(day);

    private static string Window(TariffWindow window) =>
        $"{(window.Days == DayKind.All ? "every day" : window.Days == DayKind.Weekday ? "weekdays" : "weekends")} {Clock(window.From)} – {(window.To == LocalTime.Midnight ? "24:00" : Clock(window.To))}";

    private static string Clock(LocalTime time) => LocalTimePattern.CreateWithInvariantCulture("HH:mm").Format(time);
}
