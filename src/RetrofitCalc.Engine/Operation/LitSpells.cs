using NodaTime;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Operation;

/// <summary>When an area's lights burn in a year, exactly (E-06).</summary>
/// <remarks>
/// A spell belongs to the day its lights come on, with that day's season, stage and step, even past midnight and past the season's
/// end. Where the next day's lights come on before it ends, the next day takes over. Lights with equal on and off times burn day
/// and night, whatever the clocks do.
/// </remarks>
public static class LitSpells
{
    private static readonly LitMode Weekly = new(LitMode.AllYear, null, null, 1);

    /// <summary>The spells of one area, in order, not overlapping, clipped to the year.</summary>
    /// <param name="area">The area.</param>
    /// <param name="year">The year at the site's clock.</param>
    public static IReadOnlyList<LitSpell> Of(Area area, SiteYear year)
    {
        var spells = new List<LitSpell>();
        foreach (var day in year.Days.Prepend(year.FirstDay.PlusDays(-1)))
        {
            if (area.GrowsCrop)
                AddStage(spells, area, day, year);
            else if (area.Weekly is { } weekly)
                AddWeekly(spells, weekly, day, year);
        }
        return Settle(spells, year);
    }

    private static void AddStage(List<LitSpell> spells, Area area, LocalDate day, SiteYear year)
    {
        var (season, stage) = SeasonCalendar.At(area.Seasons, day);
        if (season is null || stage is null || (stage.DaysOfWeek.Count > 0 && !stage.DaysOfWeek.Contains(day.DayOfWeek)))
            return;
        var on = year.At(day + stage.LightsOn);
        var off = stage.ClockRule == ClockRule.CountsHours && stage.LightsOn != stage.LightsOff
            ? on + NominalSeconds(stage.LightsOn, stage.LightsOff)
            : year.At(OffTime(day, stage.LightsOn, stage.LightsOff));
        spells.Add(new(on, off, new(season.Name, stage.Name, stage.LitStep, stage.Dimming)));
    }

    private static void AddWeekly(List<LitSpell> spells, WeeklySchedule weekly, LocalDate day, SiteYear year)
    {
        if (weekly.Holidays.Any(holiday => holiday.IsOn(day)))
            return;
        foreach (var hours in weekly.Hours.Where(hours => hours.Days.Contains(day.DayOfWeek)))
            spells.Add(new(year.At(day + hours.On), year.At(OffTime(day, hours.On, hours.Off)), Weekly));
    }

    private static LocalDateTime OffTime(LocalDate day, LocalTime on, LocalTime off) => (off > on ? day : day.PlusDays(1)) + off;

    private static long NominalSeconds(LocalTime on, LocalTime off)
    {
        var seconds = (off.TickOfDay - on.TickOfDay) / NodaConstants.TicksPerSecond;
        return seconds > 0 ? seconds : seconds + NodaConstants.SecondsPerDay;
    }

    private static List<LitSpell> Settle(List<LitSpell> spells, SiteYear year)
    {
        spells.Sort((a, b) => a.Start.CompareTo(b.Start));
        var settled = new List<LitSpell>(spells.Count);
        for (var i = 0; i < spells.Count; i++)
        {
            var takenOver = i + 1 < spells.Count ? spells[i + 1].Start : year.End;
            var start = Math.Max(spells[i].Start, year.Start);
            var end = Math.Min(Math.Min(spells[i].End, takenOver), year.End);
            if (end > start)
                settled.Add(spells[i] with { Start = start, End = end });
        }
        return settled;
    }
}
