using RetrofitCalc.Engine;
using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Reports;

namespace RetrofitCalc.Web.Features.Schedules;

/// <summary>A year of light in one area, as the engine works it out.</summary>
public sealed record AreaYear(string AreaId, string Name, IReadOnlyList<CalendarDay> Days, AreaOperation Operation, QuantityText Text)
{
    /// <summary>Every area whose schedule can be evaluated; the others are missing until they are mended.</summary>
    public static IReadOnlyList<AreaYear> OfAll(Study study, IReadOnlyList<StudyProblem> problems)
    {
        if (problems.Any(p => p.Path.StartsWith("Site", StringComparison.Ordinal) || p.Path.StartsWith("Assumptions.Start", StringComparison.Ordinal))) return [];
        var year = new SiteYear(study.Site.TimeZone, study.Assumptions.Start.Year);
        var text = QuantityText.For(study);
        return
        [
            .. study.Areas.Where((_, i) => !problems.Any(p => p.Path.StartsWith($"Areas[{i}]", StringComparison.Ordinal)))
                .Select(a => new AreaYear(a.Id, a.Name, OperationCalendar.Of(study, a.Id), new AreaOperation(a, year), text)),
        ];
    }
}
