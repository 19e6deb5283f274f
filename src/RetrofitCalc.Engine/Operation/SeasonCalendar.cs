using NodaTime;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Operation;

/// <summary>Which season and stage a day belongs to.</summary>
public static class SeasonCalendar
{
    /// <summary>Season and stage of a day; both null between seasons, the stage alone null after the last stage of a season.</summary>
    /// <param name="seasons">Seasons of one area, not overlapping.</param>
    /// <param name="day">The day.</param>
    public static (Season? Season, Stage? Stage) At(IReadOnlyList<Season> seasons, LocalDate day)
    {
        foreach (var season in seasons)
        {
            if (!Covers(season.Start, season.End, day))
                continue;
            var first = season.Start.InYear(day.Year);
            if (first > day)
                first = season.Start.InYear(day.Year - 1);
            return (season, StageOn(season, Period.DaysBetween(first, day)));
        }
        return (null, null);
    }

    /// <summary>Whether a day lies between two dates of the year, both included; the last may lie before the first and so cross New Year.</summary>
    /// <param name="first">First day.</param>
    /// <param name="last">Last day.</param>
    /// <param name="day">The day.</param>
    public static bool Covers(AnnualDate first, AnnualDate last, LocalDate day)
    {
        var from = first.InYear(day.Year);
        var to = last.InYear(day.Year);
        return first <= last ? day >= from && day <= to : day >= from || day <= to;
    }

    private static Stage? StageOn(Season season, int dayOfSeason)
    {
        foreach (var stage in season.Stages)
        {
            if (stage.Days is not { } length || dayOfSeason < length)
                return stage;
            dayOfSeason -= length;
        }
        return null;
    }
}
