using System.Globalization;
using NodaTime;
using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Typing;
using RetrofitCalc.Reports;

namespace RetrofitCalc.Web.Features.Schedules;

/// <summary>Sentences about light and dark.</summary>
public static class ScheduleText
{
    public static string Title(IReadOnlyList<AreaYear> areas) => areas.MaxBy(a => a.Operation.Hours) is { } most && most.Operation.Hours.Hours > 0
        ? $"{most.Name} burns longest: {most.Text.Hours(most.Operation.Hours)} a year"
        : "When do the lights burn?";

    public static string Lead(IReadOnlyList<AreaYear> areas) => areas.Where(a => a.Operation.Hours.Hours == 0).Select(a => a.Name).ToList() is { Count: > 0 } dark
        ? $"No lit hours yet in {string.Join(", ", dark)}: without them no energy is counted there."
        : "Hours decide the saving as much as watts do. Check them against the timers, not against memory.";

    public static string Finding(AreaYear light) => light.Operation.Hours.Hours == 0
        ? "Dark all year"
        : $"Lit {light.Text.Hours(light.Operation.Hours)} a year, switched on {Times(light)}";

    /// <summary>What one sees on the strip, in words: the longest and shortest lit day, and when it is dark.</summary>
    public static string Summary(AreaYear light)
    {
        var lit = light.Days.Where(d => d.LitMinutes > 0).Select(d => d.LitMinutes / 60).ToList();
        if (lit.Count == 0) return "No light on any day.";
        var (least, most) = (light.Text.Number(lit.Min(), 1), light.Text.Number(lit.Max(), 1));
        var days = least == most ? $"every lit day has {most} h" : $"lit days have {least} to {most} h";
        var dark = light.Days.Count - lit.Count;
        return $"{light.Text.Number(lit.Count)} days with light, {days}; {(dark == 0 ? "no day is dark" : $"{light.Text.Number(dark)} days are dark")}.";
    }

    /// <summary>Days of the year that belong to no season, or come after the last stage of one.</summary>
    public static IReadOnlyList<string> Gaps(AreaYear light, Area area, CultureInfo culture)
    {
        if (!area.GrowsCrop) return [];
        string Days(DayRun run) => run.Count == 1 ? AnnualDay(run.First, culture) : $"{AnnualDay(run.First, culture)} to {AnnualDay(run.Last, culture)}";
        return
        [
            .. DayRun.Where(light.Days, d => d.Season is null).Select(r => $"No season {Days(r)}: the area stands empty and dark."),
            .. DayRun.Where(light.Days, d => d is { Season: not null, Stage: null }).Select(r => $"No stage {Days(r)}, though {r.Season} goes on: dark. Leave the last stage's length blank to fill the season."),
        ];
    }

    /// <summary>Hours of light the stage asks for a day, by the clock.</summary>
    public static string Photoperiod(Stage stage, QuantityText text)
    {
        var hours = (stage.LightsOff - stage.LightsOn).ToDuration().TotalHours;
        return stage.LightsOn == stage.LightsOff ? text.Number(24) : text.Number(hours > 0 ? hours : hours + 24, 1);
    }

    private static string Times(AreaYear light) => light.Operation.Starts switch
    {
        0 => "never: it burns without a break",
        1 => "once",
        var starts => light.Text.Number(starts) + " times",
    };

    private static string AnnualDay(LocalDate day, CultureInfo culture) => AnnualDayText.Write(new(day.Month, day.Day), culture);
}
