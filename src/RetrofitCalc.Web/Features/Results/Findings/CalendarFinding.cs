using RetrofitCalc.Engine.Results;
using RetrofitCalc.Reports;

namespace RetrofitCalc.Web.Features.Results.Findings;

/// <summary>Title of the calendar: where ballasts fail before their lamps, and by how much.</summary>
public static class CalendarFinding
{
    private const double WorthSayingYears = 0.25;

    public static string Sentence(StudyResult result, QuantityText text)
    {
        if (result.Now.Replacements.Count == 0) return $"Nothing falls due in {result.Study.Assumptions.StudyYears} years";
        var lead = result.Now.Lines.Select(line => (line.Line, Years: Lead(line))).MaxBy(l => l.Years ?? double.NegativeInfinity);
        return lead.Years >= WorthSayingYears
            ? $"In {AreaOf(result, lead.Line)} the ballasts fail {text.Number(lead.Years.Value, 1)} years before the lamps"
            : $"{FirstDue(result, text)}; no ballast fails before its lamps";
    }

    private static double? Lead(LineFigures line) => First(line, WearPart.Lamp) - First(line, WearPart.Ballast);

    private static double? First(LineFigures line, WearPart part) =>
        line.Clocks.Where(clock => clock.Part == part).Min(clock => clock.FirstDue);

    private static string FirstDue(StudyResult result, QuantityText text)
    {
        var first = result.Now.Replacements.MinBy(due => due.Due)!;
        return $"The first {Parts(first.Part)} fall due in {text.Month(first.Due)}";
    }

    private static string Parts(WearPart part) => part switch
    {
        WearPart.Lamp => "lamps",
        WearPart.Ballast => "ballasts",
        WearPart.Tube => "tubes",
        _ => "luminaires",
    };

    private static string AreaOf(StudyResult result, string line) =>
        result.Study.Lines.FirstOrDefault(l => l.Id == line) is { } surveyed
            ? result.Study.Areas.FirstOrDefault(a => a.Id == surveyed.Area)?.Name ?? surveyed.Name
            : line;
}
