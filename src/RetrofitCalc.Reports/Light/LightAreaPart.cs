using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Reports;

/// <summary>One growing area in the light annex.</summary>
/// <param name="Title">The finding.</param>
/// <param name="Maps">Light over the bench; null where it is not known place by place.</param>
/// <param name="Statistics">Figures of its worst stage.</param>
/// <param name="Sentences">What it rests on and what to know.</param>
/// <param name="Tables">Readings, and ways to keep the light.</param>
public sealed record LightAreaPart(string Title, BenchMapsDrawing? Maps, ReportTable? Statistics, IReadOnlyList<string> Sentences, IReadOnlyList<ReportTable> Tables)
{
    internal static LightAreaPart Of(StageLight stage, SummaryContext context)
    {
        var option = stage.Verdict == LightVerdict.Unchanged ? null : context.Asked?.Option.Id;
        var maps = LightMaps.Of(context.Study, stage.Area, option, (stage.Season, stage.Stage));
        return new(
            $"{context.AreaName(stage.Area)}: {LightWords.Short(stage, context.Text)}",
            maps is null ? null : BenchMapsDrawing.Of(stage, maps, context),
            stage.Now is null ? null : Figures(stage, context.Text),
            [.. Said(stage, context), .. maps is null ? [] : LightFit.Of(maps, context.Text), .. stage.Warnings],
            [.. LightReadingsTable.Of(stage.Area, context), .. Fixes(stage, context.Text)]);
    }

    private static ReportTable Figures(StageLight stage, QuantityText text)
    {
        ReportRow Row(string name, Func<LightFigures, string> cell) =>
            new([name, .. new[] { stage.Now, stage.After, stage.AtEnd }.Select(light => light is null ? QuantityText.NotKnown : cell(light))]);
        return new ReportTable($"Figures of {stage.Season}, {stage.Stage}",
            [new("", 2), new("Now", 1, true), new("After the change, new", 1, true), new("At the end of the interval", 1, true)],
            [
                Row($"Mean, {LightText.LightUnit}", light => text.Number(light.Mean.MicromolesPerSquareMetre)),
                Row($"Lowest and highest, {LightText.LightUnit}", light => $"{text.Number(light.Minimum.MicromolesPerSquareMetre)} and {text.Number(light.Maximum.MicromolesPerSquareMetre)}"),
                Row("Lowest over mean", light => text.Evenness(light.MinimumToMean)),
                Row("Spread (standard deviation over mean)", light => light.CoefficientOfVariation is { } spread ? text.Percent(spread) : QuantityText.DoesNotApply),
                Row($"Daily light in {text.Hours(stage.Photoperiod)}, {LightText.DailyUnit}", light => text.DailyNumber(light.Daily)),
                Row("Area with the least light wanted or more", light => light.ShareOnTarget is { } share ? text.Percent(share) : "no target"),
            ]);
    }

    private static IEnumerable<string> Said(StageLight stage, SummaryContext context)
    {
        var text = context.Text;
        yield return LightWords.Sentence(stage, context.Study, text);
        if (stage.Verdict is not (LightVerdict.NotKnown or LightVerdict.Unchanged) && LightWords.Rated(stage, text) is { Length: > 0 } rated)
            yield return $"B{rated[3..]}; how it falls on the bench is another matter.";
        if (stage.BelowTargetAfterYears is >= 0.05 and var years) yield return $"Light falls below the target {text.Years(years)} after the change.";
        if (stage.Unreachable) yield return "No number of lit hours that the crop bears gives what it wants under this light.";
        if (stage.UncertainBy.Count > 0)
            yield return $"What makes the range: {string.Join(", ", stage.UncertainBy.Select(part => $"{part.Name}{text.GiveOrTake(part.Share)}"))}; shares of the light after the change, combined as the root of their squares (E-79).";
    }

    private static IEnumerable<ReportTable> Fixes(StageLight stage, QuantityText text)
    {
        if (stage.Fixes.Count == 0) yield break;
        yield return new ReportTable("What would keep the light, least watts first",
            [new("Fix", 2.6), new($"Mean, {LightText.LightUnit}", 0.8, true), new(LightText.DailyUnit, 0.8, true), new("Lowest over mean", 0.8, true), new("Load", 1.2, true), new("Watch out", 2.2)],
            [.. stage.Fixes.Select(fix => new ReportRow([fix.Text, text.Number(fix.Light.Mean.MicromolesPerSquareMetre), text.DailyNumber(fix.Light.Daily),
                text.Evenness(fix.Light.MinimumToMean), LightWords.ExtraLoad(fix, text), fix.WatchOut]))]);
    }
}
