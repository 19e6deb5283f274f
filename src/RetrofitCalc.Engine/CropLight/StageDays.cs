using NodaTime;
using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>Days of a stage, and when an area is lit on a day.</summary>
internal static class StageDays
{
    /// <summary>Days of a calendar year that belong to a stage, found by the names of season and stage.</summary>
    public static IEnumerable<LocalDate> Of((Area Area, Season Season, Stage Stage) stage, int year)
    {
        for (var day = new LocalDate(year, 1, 1); day.Year == year; day = day.PlusDays(1))
        {
            var (season, now) = SeasonCalendar.At(stage.Area.Seasons, day);
            if (season?.Name == stage.Season.Name && now?.Name == stage.Stage.Name) yield return day;
        }
    }

    /// <summary>Spells that begin on a day.</summary>
    public static IEnumerable<LitClock> Spells(Area area, LocalDate day)
    {
        if (area.GrowsCrop)
            return SeasonCalendar.At(area.Seasons, day).Stage is { } stage && (stage.DaysOfWeek.Count == 0 || stage.DaysOfWeek.Contains(day.DayOfWeek))
                ? [new(stage.LightsOn, stage.LightsOff)]
                : [];
        return area.Weekly is { } weekly && !weekly.Holidays.Any(holiday => holiday.IsOn(day))
            ? weekly.Hours.Where(hours => hours.Days.Contains(day.DayOfWeek)).Select(hours => new LitClock(hours.On, hours.Off))
            : [];
    }
}
