using System.Globalization;
using RetrofitCalc.Engine.Operation;

namespace RetrofitCalc.Web.Features.Schedules;

/// <summary>Lit hours by month and season: the strip's twin as a table. Columns sum to the year.</summary>
public sealed record LightHours(IReadOnlyList<string> Seasons, IReadOnlyList<MonthOfLight> Months)
{
    private const string Outside = "Between seasons";

    public static LightHours Of(IReadOnlyList<CalendarDay> days)
    {
        var seasons = days.Where(d => d.LitMinutes > 0 || d.Season is not null).Select(SeasonOf).Distinct().ToList();
        return new(seasons, [.. days.GroupBy(d => d.Date.Month).Select(month => Month(month.Key, [.. month], seasons))]);
    }

    public IReadOnlyList<double> SeasonTotals => [.. Seasons.Select((_, i) => Months.Sum(m => m.Hours[i]))];

    public double Total => Months.Sum(m => m.Total);

    private static MonthOfLight Month(int month, IReadOnlyList<CalendarDay> days, IReadOnlyList<string> seasons) => new(
        CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(month),
        [.. seasons.Select(season => days.Where(d => SeasonOf(d) == season).Sum(d => d.LitMinutes) / 60)]);

    private static string SeasonOf(CalendarDay day) => day.Season ?? Outside;
}

/// <summary>Lit hours of a month, by season.</summary>
public sealed record MonthOfLight(string Name, IReadOnlyList<double> Hours)
{
    public double Total => Hours.Sum();
}
