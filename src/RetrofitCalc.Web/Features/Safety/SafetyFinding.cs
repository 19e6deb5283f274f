using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Web.Shared;

namespace RetrofitCalc.Web.Features.Safety;

/// <summary>Title of the safety page: what is still open, stops first.</summary>
public static class SafetyFinding
{
    public static string Sentence(IReadOnlyList<SafetyNotice> notices)
    {
        var stops = Open(notices, NoticeSeverity.Stop);
        var warnings = Open(notices, NoticeSeverity.Warn);
        return (stops.Count, warnings.Count) switch
        {
            (1, _) => $"One stop is open: {stops[0].Group.ToLowerInvariant()}",
            ( > 1, _) => $"{CountText.Word(stops.Count)} stops are open",
            (0, 0) => notices.Count == 0 ? "No rule speaks up for this survey" : "Every stop and warning is answered",
            (0, 1) => "No stop is open; one warning waits for its answer",
            _ => $"No stop is open; {warnings.Count} warnings wait for their answers",
        };
    }

    /// <summary>What an open stop holds up.</summary>
    public static string Lead(Study study, IReadOnlyList<SafetyNotice> notices)
    {
        var stops = Open(notices, NoticeSeverity.Stop);
        if (stops.Count == 0) return "Warnings are answered before anything is ordered. Facts that are still missing may raise further notices.";
        var lines = stops.SelectMany(stop => stop.Lines).Distinct().ToList();
        var held = stops.Any(stop => stop.Lines.Count == 0) || lines.Count == 0 ? "Nothing" : $"Nothing on {SafetyWords.Lines(study, lines)}";
        return $"{held} may be ordered or changed until {(stops.Count == 1 ? "the question below is" : "the questions below are")} answered.";
    }

    private static List<SafetyNotice> Open(IEnumerable<SafetyNotice> notices, NoticeSeverity severity) =>
        [.. notices.Where(notice => notice.Severity == severity && notice.Open)];
}
