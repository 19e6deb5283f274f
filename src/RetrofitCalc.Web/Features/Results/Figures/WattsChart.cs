using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Reports;
using RetrofitCalc.Web.Charts;
using RetrofitCalc.Web.Features.Results.Findings;

namespace RetrofitCalc.Web.Features.Results.Figures;

/// <summary>Connected watts by set-up, now and proposed, with what the ballasts lose.</summary>
public static class WattsChart
{
    private const int MostGroups = 10;

    public static ChartFigure Of(StudyResult result, QuantityText text)
    {
        var groups = WattsGroup.Of(result, MostGroups);
        return new ChartFigure(WattsFinding.Sentence(result, text), Drawn(result, text),
            $"Watts by set-up: {text.Watts(result.Now.Site.Connected)} now{Proposed(result, text)}. Each set-up in the table below.",
            Spec(groups, text), Twin(groups, text))
        {
            Legend = [new(Ink.Now, "lamps now"), new(Ink.NowHatched, "ballast loss"), .. result.Chosen is null ? Array.Empty<ChartKey>() : [new(Ink.Proposed, "proposed")]],
        };
    }

    private static string Drawn(StudyResult result, QuantityText text) =>
        $"Watts connected, by set-up; {text.Watts(result.Now.Site.Connected)} now{Proposed(result, text)}.";

    private static string Proposed(StudyResult result, QuantityText text) =>
        result.Chosen is { } option ? $", {text.Watts(option.After.Site.Connected)} proposed" : "";

    private static ChartSpec Spec(IReadOnlyList<WattsGroup> groups, QuantityText text)
    {
        ChartSeries Bars(string name, Ink ink, string stack, Func<WattsGroup, Power?> watts, Func<WattsGroup, string?> label) =>
            new(name, ink, [.. groups.Select((g, i) => new ChartPoint(watts(g)?.Watts ?? 0, i, label(g)))], stack);
        var series = new List<ChartSeries>
        {
            Bars("lamps now", Ink.Now, "now", g => g.Now - g.LossNow, _ => null),
            Bars("ballast loss now", Ink.NowHatched, "now", g => g.LossNow, g => text.Number(g.Now.Watts)),
        };
        if (groups.Any(g => g.After is not null))
        {
            series.Add(Bars("proposed", Ink.Proposed, "proposed", g => g.After - g.LossAfter, _ => null));
            series.Add(Bars("ballast loss proposed", Ink.ProposedHatched, "proposed", g => g.LossAfter, g => After(g, text)));
        }
        return new ChartSpec(ChartKind.Bars, series)
        {
            Groups = [.. groups.Select(g => new[] { g.Name, $"{text.Count(g.Luminaires)} {(g.Luminaires == 1 ? "luminaire" : "luminaires")}" })],
            Across = new ChartAxis(0, groups.Select(g => Math.Max(g.Now.Watts, g.After?.Watts ?? 0)).DefaultIfEmpty(1).Max(), []),
        };
    }

    private static string? After(WattsGroup group, QuantityText text) =>
        group.After is not { } after ? null : text.Number(after.Watts) + (group.Kept ? " (kept)" : "");

    private static ChartTable Twin(IReadOnlyList<WattsGroup> groups, QuantityText text) => new(
        ["Set-up", "Luminaires", "Now, W", "of it ballast loss, W", "Proposed, W"],
        [.. groups.Select(g => new[]
        {
            g.Name, text.Count(g.Luminaires), text.Number(g.Now.Watts),
            g.LossKnown ? text.Number(g.LossNow.Watts) : QuantityText.NotKnown,
            After(g, text) ?? QuantityText.DoesNotApply,
        })]);
}
