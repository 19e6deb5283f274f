using NodaTime;
using RetrofitCalc.Engine.Operation;

namespace RetrofitCalc.Web.Features.Schedules;

/// <summary>Days in a row that are alike.</summary>
/// <param name="Start">Index of the first day in the year, from 0.</param>
public sealed record DayRun(int Start, IReadOnlyList<CalendarDay> Days)
{
    public int Count => Days.Count;

    public LocalDate First => Days[0].Date;

    public LocalDate Last => Days[^1].Date;

    public string? Season => Days[0].Season;

    public IReadOnlyList<LitSpan> Spans => Days[0].Spans;

    /// <summary>The days cut wherever <paramref name="alike"/> says no.</summary>
    public static IReadOnlyList<DayRun> Of(IReadOnlyList<CalendarDay> days, Func<CalendarDay, CalendarDay, bool> alike)
    {
        var runs = new List<DayRun>();
        var from = 0;
        for (var i = 1; i <= days.Count; i++)
        {
            if (i < days.Count && alike(days[i - 1], days[i])) continue;
            runs.Add(new(from, [.. days.Skip(from).Take(i - from)]));
            from = i;
        }
        return runs;
    }

    /// <summary>Runs of days of which something is true, cut where the season changes.</summary>
    public static IEnumerable<DayRun> Where(IReadOnlyList<CalendarDay> days, Func<CalendarDay, bool> holds) =>
        Of(days, (a, b) => holds(a) == holds(b) && a.Season == b.Season).Where(run => holds(run.Days[0]));
}
