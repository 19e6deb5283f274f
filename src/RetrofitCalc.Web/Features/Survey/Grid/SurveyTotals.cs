using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Reports;

namespace RetrofitCalc.Web.Features.Survey.Grid;

/// <summary>The foot of the grid: sums of the figures as printed above it, so that anyone can add them up again.</summary>
public sealed record SurveyTotals(string Extent, string Luminaires, string Loss, string Total)
{
    public static SurveyTotals Of(Study study, StudyResult? result, QuantityText text)
    {
        var lines = result?.Now.Lines ?? [];
        return new(
            $"{Count(study.Lines.Count, "line")}, {Count(study.Areas.Count, "area")}",
            text.Count(lines.Sum(l => l.Luminaires)),
            text.Number(lines.Sum(l => Whole(l.BallastLoss?.Watts ?? 0))),
            text.Number(lines.Sum(l => Whole(l.Connected.Watts))));
    }

    /// <summary>The finding on top of the page.</summary>
    public string Lead(StudyResult? result) => result is null || result.Now.Lines.Count == 0
        ? "No line counts yet. Give a line its set-up and its count, and its watts appear here."
        : $"{Luminaires} luminaires draw {Total}\u00A0W; {Loss}\u00A0W of it is lost in ballasts before it becomes light.";

    private static double Whole(double watts) => Math.Round(watts, MidpointRounding.AwayFromZero);

    private static string Count(int count, string one) => FormattableString.Invariant($"{count} {one}{(count == 1 ? "" : "s")}");
}
