using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Reports;

/// <summary>What the first page says of the crop's light.</summary>
/// <param name="Verdict">The worst of all growing areas.</param>
/// <param name="Word">The finding: "Crop loses light", "Crop light not known".</param>
/// <param name="Sentences">The worst area first, with what would keep its light.</param>
public sealed record CropLightPart(LightVerdict Verdict, string Word, IReadOnlyList<string> Sentences)
{
    private const int MostAreas = 2;

    /// <summary>Null when no crop grows in this study.</summary>
    internal static CropLightPart? Of(SummaryContext context)
    {
        if (context.Light.Worst is { } worst) return new(worst, WordOf(worst) + (worst is LightVerdict.Keeps && context.Light.WorstByArea.Any(area => area.TooMuch) ? ", more than wanted" : ""), [.. Said(context).Concat(AtEqualLight(context))]);
        return context.Study.Areas.FirstOrDefault(area => area.GrowsCrop) is { } unlit
            ? new(LightVerdict.NotKnown, WordOf(LightVerdict.NotKnown), [$"Say when the crop of {unlit.Name} is lit, and read the light there on a grid at the height of the crop."])
            : null;
    }

    private static string WordOf(LightVerdict verdict) => verdict switch
    {
        LightVerdict.Loses => "Crop loses light",
        LightVerdict.KeepsAtFirst => "Crop keeps its light at first only",
        LightVerdict.Keeps => "Crop keeps its light",
        LightVerdict.Unchanged => "Crop light unchanged",
        _ => "Crop light not known",
    };

    private static IEnumerable<string> Said(SummaryContext context)
    {
        var areas = context.Light.WorstFirst;
        var bad = areas.Where(area => area.Verdict is LightVerdict.Loses or LightVerdict.KeepsAtFirst).ToList();
        foreach (var area in bad.Take(MostAreas)) yield return LightWords.Sentence(area, context.Study, context.Text) + Fixed(area, context);
        if (bad.Count > MostAreas) yield return $"{bad.Count - MostAreas} more growing areas have too little light; they stand in annex D.";
        var unknown = areas.Where(area => area.Verdict == LightVerdict.NotKnown).ToList();
        var rest = $"{(unknown.Count > 0 ? NotKnown(unknown, areas.Count, context) : "")} {Kept(areas, context)}".Trim();
        if (rest.Length > 0) yield return rest;
        foreach (var area in areas.Except(bad).Where(area => area.TooMuch || area.Unreachable).Take(MostAreas)) yield return LightWords.Sentence(area, context.Study, context.Text);
    }

    private static string Fixed(StageLight area, SummaryContext context) => area.Fixes switch
    {
        [var least, ..] => $" What keeps it: {LightWords.Fix(least, context.Text)}.",
        _ => LightWords.Hopeless(area),
    };

    private static string NotKnown(List<StageLight> unknown, int of, SummaryContext context)
    {
        // What lamps send out matters where it is all there is to know.
        var dimmest = unknown.Count < of ? null : unknown.Where(area => area.RatedChange is not null).MinBy(area => area.RatedChange);
        var rated = dimmest is null ? "" : $" ({context.AreaName(dimmest.Area)}{LightWords.Rated(dimmest, context.Text)[1..]})";
        return $"Not known in {unknown.Count} of {of} growing areas{rated}. {unknown[0].Ask}".TrimEnd();
    }

    private static string Kept(IReadOnlyList<StageLight> areas, SummaryContext context)
    {
        var kept = areas.Where(area => area.Verdict == LightVerdict.Keeps).ToList();
        var same = areas.Count(area => area.Verdict == LightVerdict.Unchanged);
        var worst = kept.Where(area => area.Change is not null).MinBy(area => area.Change);
        var keeps = kept.Count switch
        {
            0 => "",
            1 => $"Kept in {context.AreaName(kept[0].Area)}{By(kept[0], context)}.",
            var many => $"Kept in {many} growing areas{(worst is null ? "" : $", least in {context.AreaName(worst.Area)}{By(worst, context)}")}.",
        };
        return kept.Count > 0 || same < areas.Count ? keeps : "Nothing is done over the crops.";
    }

    private static string By(StageLight area, SummaryContext context) =>
        area.Change is { } change ? $" ({context.Text.Change(change)}{context.Text.GiveOrTake(area.ChangeUncertainty)})" : "";

    private static IEnumerable<string> AtEqualLight(SummaryContext context)
    {
        if (context.Asked is not { AtEqualLight: { Differs: true } equal } option) yield break;
        var text = context.Text;
        yield return $"At equal light{EqualLightWords.Without(equal)} {text.Money(equal.AnnualBillSaving)} saved a year for {text.Money(equal.FirstCost)} ({text.Payback(equal.SimplePayback, context.Years)}); "
            + $"luminaire for luminaire {text.Money(context.AskedFigures!.BillSaving)} for {text.Money(context.AskedFigures.FirstCost)} ({text.Payback(option.SimplePayback, context.Years)}).";
    }
}
