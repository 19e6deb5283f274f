using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>What a grower should know about the light of a stage.</summary>
internal static class StageWarnings
{
    /// <summary>A survey and readings that differ more in height are not about the same place. [unitless]; common practice, no source.</summary>
    private const double OtherHeight = 0.1;

    /// <summary>The warnings, those about the crop first.</summary>
    /// <param name="change">The bench and the option.</param>
    /// <param name="season">Name of the season.</param>
    /// <param name="after">The stage as the option lights it.</param>
    /// <param name="stage">The verdict so far.</param>
    /// <param name="read">The readings it rests on; null without any.</param>
    public static IReadOnlyList<string> Of(BenchChange change, string season, Stage after, StageLight stage, MeasuredLight? read) =>
    [
        .. OfTarget(stage),
        .. DayLengthWarnings.Of(change.Bench.Context.Study, change.AreaAfter, change.AreaAfter.Seasons.First(each => each.Name == season), after),
        .. read is null ? [] : OfHeights(change.Bench, read),
        .. change.Bench.Fit?.TooMuch is { } tooMuch ? (string[])[tooMuch] : [],
        .. read?.Doubts.Select(doubt => doubt.Text) ?? [],
    ];

    private static IEnumerable<string> OfTarget(StageLight stage)
    {
        var least = LightWanted.Least(stage.Target, stage.Photoperiod);
        if (stage.Now is { } now && least is { } wanted && StageJudge.IsBelow(now.Mean, wanted))
            yield return $"The light is below the target for {stage.Target!.Crop} today.";
        if (stage.TooMuch)
            yield return $"That is more light than {stage.Target!.Crop} is said to want.";
        if (stage.Unreachable)
            yield return $"No number of hours that {stage.Target!.Crop} bears gives its target under this light.";
        if (stage.Target is { WeakSource: true } weak)
            yield return $"The target for {weak.Crop} comes from a weak source: ask the grower.";
    }

    private static IEnumerable<string> OfHeights(PresentBench bench, MeasuredLight read)
    {
        if (bench.Fit is null && bench.Lines.Select(line => line.Line.MountingHeight).FirstOrDefault(height => height is not null) is { } surveyed
            && Math.Abs(read.Set.Height.Metres / surveyed.Metres - 1) > OtherHeight)
            yield return $"The light was read {LightAsk.Plain(read.Set.Height)} below the lamps, but the survey says they hang {LightAsk.Plain(surveyed)} over the crop: the figures hold where it was read.";
    }
}
