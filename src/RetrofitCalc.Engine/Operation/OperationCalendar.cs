using NodaTime;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Operation;

/// <summary>Light and dark of one area, day by day, for the year strip.</summary>
public static class OperationCalendar
{
    /// <summary>Each day of the study's calendar year, in order: 365 or 366.</summary>
    /// <param name="study">A study without problems.</param>
    /// <param name="areaId">Id of the area.</param>
    /// <exception cref="ArgumentException">The study has no such area.</exception>
    public static IReadOnlyList<CalendarDay> Of(Study study, string areaId)
    {
        var area = study.Areas.FirstOrDefault(a => a.Id == areaId) ?? throw new ArgumentException($"No area {areaId}.", nameof(areaId));
        var year = new SiteYear(study.Site.TimeZone, study.Assumptions.Start.Year);
        var spans = LitSpells.Of(area, year).SelectMany(spell => Spans(spell, year)).ToLookup(pair => pair.Day, pair => pair.Span);
        return [.. year.Days.Select(day => DayOf(area, day, [.. spans[day]]))];
    }

    private static CalendarDay DayOf(Area area, LocalDate day, IReadOnlyList<LitSpan> spans)
    {
        if (!area.GrowsCrop)
            return new(day, null, null, spans);
        var (season, stage) = SeasonCalendar.At(area.Seasons, day);
        return new(day, season?.Name, stage?.Name, spans);
    }

    private static IEnumerable<(LocalDate Day, LitSpan Span)> Spans(LitSpell spell, SiteYear year)
    {
        for (var from = spell.Start; from < spell.End;)
        {
            var start = year.WallTime(from);
            var midnight = year.StartOf(start.Date.PlusDays(1));
            var to = Math.Min(spell.End, midnight);
            var startMinute = Minute(start.TimeOfDay);
            var endMinute = to == midnight ? 24 * 60 : Minute(year.WallTime(to).TimeOfDay);
            // On the night the clocks go back a spell may end at an earlier wall time than it began.
            yield return (start.Date, new(startMinute, Math.Max(startMinute, endMinute), (to - from) / 60.0));
            from = to;
        }
    }

    private static int Minute(LocalTime time) => time.Hour * 60 + time.Minute;
}

/// <summary>One day of the year strip.</summary>
/// <param name="Date">The day.</param>
/// <param name="Season">Season of the day; null between seasons and where no crop grows.</param>
/// <param name="Stage">Stage of the day; null after the season's last stage.</param>
/// <param name="Spans">Lit spans by the wall clock of this day, those running on from the day before included.</param>
public sealed record CalendarDay(LocalDate Date, string? Season, string? Stage, IReadOnlyList<LitSpan> Spans)
{
    /// <summary>Minutes with light that really pass on this day; a day of clock change has 1380 or 1500. [min]</summary>
    public double LitMinutes => Spans.Sum(span => span.Minutes);
}

/// <summary>A lit span within one day.</summary>
/// <param name="StartMinute">Wall clock at its start. [min after midnight, 0–1439]</param>
/// <param name="EndMinute">Wall clock at its end. [min after midnight, up to 1440]</param>
/// <param name="Minutes">Minutes that really pass; differs from end less start on the night the clocks change. [min]</param>
public sealed record LitSpan(int StartMinute, int EndMinute, double Minutes);
