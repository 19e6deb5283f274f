using NodaTime;
using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Checks;

internal static class AreaCheck
{
    /// <summary>A leap year, so that 29 February is looked at too.</summary>
    private const int LeapYear = 2028;

    public static void Run(Study study, Problems problems)
    {
        problems.Unique("Areas", "Area", study.Areas.Select(area => area.Id));
        foreach (var (index, area) in study.Areas.Index())
        {
            var path = $"Areas[{index}]";
            problems.InRange($"{path}.HeatInSpace", "Share of heat in the space", area.HeatInSpace, 0, 1);
            problems.InRange($"{path}.BallastCaseTemperature", "Ballast case temperature (°C)", area.BallastCaseTemperature, -40, 150);
            foreach (var (number, season) in area.Seasons.Index())
                CheckSeason(season, area, $"{path}.Seasons[{number}]", problems);
            CheckOverlap(area, path, problems);
            CheckWeekly(area.Weekly, $"{path}.Weekly", problems);
            HolidayCheck.Run(area.Weekly?.Holidays ?? [], $"{path}.Weekly.Holidays", problems);
        }
    }

    private static void CheckSeason(Season season, Area area, string path, Problems problems)
    {
        if (season.Name == LitMode.BetweenSeasons)
            problems.Add($"{path}.Name", $"A season of {area.Name} is called \"{season.Name}\", which names the time without one; choose another name.");
        foreach (var (number, stage) in season.Stages.Index())
        {
            problems.InRange($"{path}.Stages[{number}].Days", $"Length of stage \"{stage.Name}\" (days)", stage.Days, 1, 366);
            problems.InRange($"{path}.Stages[{number}].Dimming", $"Dimming level of stage \"{stage.Name}\"", stage.Dimming, 0.01, 1);
            if (stage.Days is null && number < season.Stages.Count - 1)
                problems.Add($"{path}.Stages[{number}].Days", $"Stage \"{stage.Name}\" has no length, so it fills the rest of {season.Name}, but \"{season.Stages[number + 1].Name}\" comes after it; give its length in days.");
        }
        var used = season.Stages.Sum(stage => stage.Days ?? 0);
        if (used > LengthOf(season))
            problems.Add($"{path}.Stages", $"The stages of {season.Name} take {used} days, but the season has {LengthOf(season)}; shorten a stage or lengthen the season.");
    }

    private static int LengthOf(Season season)
    {
        var from = season.Start.InYear(season.End < season.Start ? LeapYear - 1 : LeapYear);
        var to = season.End.InYear(LeapYear);
        return Period.DaysBetween(from, to) + 1;
    }

    private static void CheckOverlap(Area area, string path, Problems problems)
    {
        for (var later = 1; later < area.Seasons.Count; later++)
            for (var earlier = 0; earlier < later; earlier++)
                if (FirstShared(area.Seasons[earlier], area.Seasons[later]) is { } day)
                    problems.Add($"{path}.Seasons[{later}]", $"Seasons \"{area.Seasons[earlier].Name}\" and \"{area.Seasons[later].Name}\" of {area.Name} overlap on {CheckText.Day(day)}; seasons of one area may not.");
    }

    private static LocalDate? FirstShared(Season one, Season other)
    {
        for (var day = new LocalDate(LeapYear, 1, 1); day.Year == LeapYear; day = day.PlusDays(1))
            if (SeasonCalendar.Covers(one.Start, one.End, day) && SeasonCalendar.Covers(other.Start, other.End, day))
                return day;
        return null;
    }

    private static void CheckWeekly(WeeklySchedule? weekly, string path, Problems problems)
    {
        foreach (var (number, hours) in (weekly?.Hours ?? []).Index())
        {
            if (hours.Days.Count == 0)
                problems.Add($"{path}.Hours[{number}].Days", $"The hours from {CheckText.Time(hours.On)} to {CheckText.Time(hours.Off)} name no day of the week; choose at least one.");
            foreach (var earlier in weekly!.Hours.Take(number))
                if (SharedDay(earlier, hours) is { } day)
                    problems.Add($"{path}.Hours[{number}]", $"The hours from {CheckText.Time(hours.On)} to {CheckText.Time(hours.Off)} overlap those from {CheckText.Time(earlier.On)} to {CheckText.Time(earlier.Off)} on {day}.");
        }
    }

    /// <summary>First weekday on which two spells overlap, what runs past midnight included; null when they never do.</summary>
    private static IsoDayOfWeek? SharedDay(WeeklyHours one, WeeklyHours other)
    {
        foreach (var day in one.Days)
            foreach (var otherDay in other.Days)
                for (var week = -1; week <= 1; week++)
                {
                    var gapHours = 24.0 * ((int)otherDay - (int)day + 7 * week);
                    if (gapHours + Hour(other.On) < Hour(one.On) + Length(one) && Hour(one.On) < gapHours + Hour(other.On) + Length(other))
                        return otherDay;
                }
        return null;
    }

    private static double Hour(LocalTime time) => time.TickOfDay / (double)NodaConstants.TicksPerHour;

    private static double Length(WeeklyHours hours) => hours.Off > hours.On ? Hour(hours.Off) - Hour(hours.On) : 24 + Hour(hours.Off) - Hour(hours.On);
}
