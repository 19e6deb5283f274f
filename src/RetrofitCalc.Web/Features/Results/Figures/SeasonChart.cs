using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Reports;
using RetrofitCalc.Web.Charts;
using RetrofitCalc.Web.Features.Results.Findings;

namespace RetrofitCalc.Web.Features.Results.Figures;

/// <summary>Cost and energy of each season, now and proposed.</summary>
public static class SeasonChart
{
    private sealed record Season(string Name, ShareFigures Now, ShareFigures? After);

    public static ChartFigure Of(StudyResult result, QuantityText text)
    {
        var seasons = Seasons(result);
        var proposed = result.Chosen is { } option ? $", {text.Money(PrintedSums.Cost(option.After))} proposed" : "";
        var totals = $"{text.Money(PrintedSums.Cost(result.Now))} now{proposed}";
        return new ChartFigure(SeasonFinding.Sentence(result, text),
            $"Cost of the lights and of the cooling and heating that follow, with their energy, by season of one year; {totals}.",
            $"Cost by season: {totals} in the year. Each season in the table below.",
            Spec(seasons, text), Twin(seasons, text))
        {
            Legend = [new(Ink.Now, "now"), .. result.Chosen is null ? Array.Empty<ChartKey>() : [new(Ink.Proposed, "proposed")]],
        };
    }

    private static List<Season> Seasons(StudyResult result)
    {
        var after = result.Chosen?.After.Seasons.ToDictionary(s => s.Name);
        return [.. from now in result.Now.Seasons
                   let later = after?.GetValueOrDefault(now.Name)
                   where now.Lighting > Energy.Zero || later?.Lighting > Energy.Zero
                   select new Season(now.Name, now, later)];
    }

    private static ChartSpec Spec(List<Season> seasons, QuantityText text)
    {
        ChartSeries Side(string name, Ink ink, Func<Season, ShareFigures?> side) => new(name, ink,
            [.. seasons.Select((s, i) => new ChartPoint(side(s)?.Cost.Units ?? 0, i, Label(side(s), text)))], name);
        var series = new List<ChartSeries> { Side("now", Ink.Now, s => s.Now) };
        if (seasons.Any(s => s.After is not null)) series.Add(Side("proposed", Ink.Proposed, s => s.After));
        var costs = seasons.SelectMany(s => new[] { s.Now.Cost.Units, s.After?.Cost.Units ?? 0 }).ToList();
        return new ChartSpec(ChartKind.Bars, series)
        {
            Groups = [.. seasons.Select(s => new[] { s.Name })],
            Across = new ChartAxis(costs.DefaultIfEmpty(0).Min(), costs.DefaultIfEmpty(1).Max(), []),
        };
    }

    private static string? Label(ShareFigures? side, QuantityText text) =>
        side is null ? null : $"{text.Money(side.Cost)} · {text.KilowattHours(side.Lighting + side.Plant)}";

    private static ChartTable Twin(List<Season> seasons, QuantityText text)
    {
        string Cost(ShareFigures? side) => side is null ? QuantityText.DoesNotApply : text.Money(side.Cost);
        string Energy(ShareFigures? side) => side is null ? QuantityText.DoesNotApply : text.Number((side.Lighting + side.Plant).KilowattHours);
        return new ChartTable(
            ["Season", "Cost now", "Cost proposed", "Energy now, kWh", "Energy proposed, kWh", "Lit hours"],
            [.. seasons.Select(s => new[] { s.Name, Cost(s.Now), Cost(s.After), Energy(s.Now), Energy(s.After), text.Number(s.Now.Hours.Hours) })]);
    }
}
