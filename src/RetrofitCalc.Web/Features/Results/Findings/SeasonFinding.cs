using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Reports;

namespace RetrofitCalc.Web.Features.Results.Findings;

/// <summary>Title of the season drawing: which part of the year brings most.</summary>
public static class SeasonFinding
{
    public static string Sentence(StudyResult result, QuantityText text)
    {
        if (result.Chosen is not { } option) return Dearest(result, text);
        var saved = Savings(result.Now, option.After);
        var total = saved.Aggregate(Money.Zero, (sum, season) => sum + season.Saving);
        if (total <= Money.Zero) return $"“{option.Option.Name}” does not lower the cost of any year";
        var most = saved.MaxBy(season => season.Saving)!;
        return saved.Count == 1 || most.Saving >= total
            ? $"{most.Name} brings the whole saving, {text.Money(most.Saving)}"
            : $"{most.Name} brings {text.Percent(most.Saving / total)} of the saving";
    }

    private static string Dearest(StudyResult result, QuantityText text) =>
        result.Now.Seasons.MaxBy(season => season.Cost) is { } dearest
            ? $"{dearest.Name} costs most: {text.Money(dearest.Cost)} of {text.Money(result.Now.Site.Cost)}"
            : "No season is lit";

    private static List<(string Name, Money Saving)> Savings(LightingCase now, LightingCase after) =>
        [.. from before in now.Seasons
            join later in after.Seasons on before.Name equals later.Name
            where before.Cost != Money.Zero || later.Cost != Money.Zero
            select (before.Name, before.Cost - later.Cost)];
}
