using NodaTime;
using NodaTime.Text;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Reports;

/// <summary>When the lights of each area burn.</summary>
internal static class ScheduleTable
{
    public static ReportTable Of(SummaryContext context) => new($"Hours of light, at the clock of {context.Study.Site.TimeZone}",
        [new("Area", 1.3), new("Season or days", 2.1), new("Stage", 1.2), new("From – to", 1.2), new("Remarks", 2)],
        [.. context.Study.Areas.SelectMany(area => Rows(area, context.Text))]);

    private static IEnumerable<ReportRow> Rows(Area area, QuantityText text)
    {
        if (area.GrowsCrop && area.Seasons.Count > 0) return area.Seasons.SelectMany(season => SeasonRows(area, season, text));
        if (!area.GrowsCrop && area.Weekly is { } weekly) return WeeklyRows(area, weekly);
        return [new ReportRow([area.Name, QuantityText.NotKnown, "", "", "counted as never lit"])];
    }

    private static IEnumerable<ReportRow> SeasonRows(Area area, Season season, QuantityText text) =>
        season.Stages.Select(stage => new ReportRow([
            area.Name, $"{season.Name}, {Day(season.Start)} – {Day(season.End)}",
            stage.Name + (stage.Days is { } days ? $", {days} days" : ""), Span(stage.LightsOn, stage.LightsOff), Remarks(stage, text)]));

    private static IEnumerable<ReportRow> WeeklyRows(Area area, WeeklySchedule weekly) =>
        weekly.Hours.Select(hours => new ReportRow([
            area.Name, Days(hours.Days), "all year", Span(hours.On, hours.Off),
            weekly.Holidays.Count > 0 ? $"{weekly.Holidays.Count} holidays dark" : ""]));

    private static string Remarks(Stage stage, QuantityText text) => string.Join("; ", new[]
    {
        stage.DaysOfWeek.Count > 0 ? Days(stage.DaysOfWeek) : "",
        stage.LitStep ?? "",
        stage.Dimming < 1 ? $"dimmed to {text.Percent(stage.Dimming)}" : "",
        stage.ClockRule == ClockRule.CountsHours ? "controller counts hours" : "",
    }.Where(part => part.Length > 0));

    private static string Days(IReadOnlyList<IsoDayOfWeek> days) => days.Count == 7 ? "every day" : string.Join(", ", days.Select(day => day.ToString()[..3]));

    private static string Day(AnnualDate day) => AnnualDatePattern.CreateWithInvariantCulture("d MMM").Format(day);

    private static string Span(LocalTime on, LocalTime off)
    {
        if (on == off) return "day and night";
        var clock = LocalTimePattern.CreateWithInvariantCulture("HH:mm");
        return $"{clock.Format(on)} – {clock.Format(off)}";
    }
}
