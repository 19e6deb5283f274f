using NodaTime;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Reports;
using RetrofitCalc.Web.Charts;
using RetrofitCalc.Web.Features.Results.Findings;

namespace RetrofitCalc.Web.Features.Results.Figures;

/// <summary>When lamps and ballasts fall due if everything is kept, area by area.</summary>
public static class CalendarChart
{
    private const int MostRows = 8;
    private const int MostDates = 8;
    private const double LampTrack = -0.15;
    private const double BallastTrack = 0.25;
    private const double DaysPerYear = 365.2425;

    /// <summary>What falls due in one area; lines that share a month share a mark.</summary>
    private sealed record Row(Area Area, int Lines, List<ReplacementEvent> Due)
    {
        public List<ReplacementEvent> Of(WearPart part) => [.. Due.Where(d => d.Part == part).DistinctBy(d => (d.Due.Year, d.Due.Month))];
    }

    public static ChartFigure Of(StudyResult result, QuantityText text)
    {
        var (rows, left) = Rows(result);
        var years = result.Study.Assumptions.StudyYears;
        return new ChartFigure(CalendarFinding.Sentence(result, text),
            $"Replacements if everything is kept, {years} years from {text.Month(result.Study.Assumptions.Start)}.{Left(left)}",
            $"Calendar of {years} years with a track for lamps and one for ballasts in each area. Dates in the table below.",
            Spec(rows, result.Study.Assumptions), Twin(rows, text))
        {
            Legend = [new(Ink.HollowCircle, "lamps due"), new(Ink.FilledSquare, "ballasts due")],
        };
    }

    private static string Left(int left) => left == 0 ? "" : $" The {MostRows} areas where it costs most; {left} more are not drawn.";

    private static (List<Row> Rows, int Left) Rows(StudyResult result)
    {
        var areaOf = result.Study.Lines.ToDictionary(l => l.Id, l => l.Area);
        var byArea = result.Now.Replacements.ToLookup(e => areaOf.GetValueOrDefault(e.Line));
        var all = result.Study.Areas.Where(a => byArea.Contains(a.Id))
            .Select(a => new Row(a, byArea[a.Id].Select(e => e.Line).Distinct().Count(), [.. byArea[a.Id].OrderBy(e => e.Due)])).ToList();
        var dearest = all.OrderByDescending(r => r.Due.Aggregate(Money.Zero, (sum, e) => sum + e.Cost)).Take(MostRows).ToHashSet();
        return ([.. all.Where(dearest.Contains)], all.Count - dearest.Count);
    }

    private static ChartSpec Spec(List<Row> rows, Assumptions assumptions)
    {
        ChartSeries Marks(string name, Ink ink, WearPart part, double track) =>
            new(name, ink, [.. rows.SelectMany((row, i) => row.Of(part).Select(e => new ChartPoint(e.YearsFromStart, i + track)))]);
        return new ChartSpec(ChartKind.Calendar,
            [Marks("lamps due", Ink.HollowCircle, WearPart.Lamp, LampTrack), Marks("ballasts due", Ink.FilledSquare, WearPart.Ballast, BallastTrack)])
        {
            Across = new ChartAxis(0, assumptions.StudyYears, [.. NewYears(assumptions)]),
            Up = new ChartAxis(-0.5, Math.Max(rows.Count, 1) - 0.5,
                [.. rows.Select((row, i) => new ChartTick(i, [row.Area.Name, row.Lines == 1 ? "1 line" : $"{row.Lines} lines"]))]),
        };
    }

    private static IEnumerable<ChartTick> NewYears(Assumptions assumptions)
    {
        for (var year = assumptions.Start.Year; year <= assumptions.Start.Year + assumptions.StudyYears; year++)
        {
            var at = Period.DaysBetween(assumptions.Start, new LocalDate(year, 1, 1)) / DaysPerYear;
            if (at >= 0 && at < assumptions.StudyYears - 0.01) yield return new ChartTick(at, [$"{year}"]);
        }
    }

    private static ChartTable Twin(List<Row> rows, QuantityText text)
    {
        string Dates(List<ReplacementEvent> due) => due.Count switch
        {
            0 => "none",
            <= MostDates => string.Join(", ", due.Select(d => text.Month(d.Due))),
            _ => $"{string.Join(", ", due.Take(MostDates).Select(d => text.Month(d.Due)))} and {due.Count - MostDates} more",
        };
        return new ChartTable(["Area", "Lamps due", "Ballasts due"],
            [.. rows.Select(row => new[] { row.Area.Name, Dates(row.Of(WearPart.Lamp)), Dates(row.Of(WearPart.Ballast)) })]);
    }
}
