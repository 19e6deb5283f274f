using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Reports;

namespace RetrofitCalc.Web.Shared;

/// <summary>Light on the crop as the strip has it: how many growing areas get what they want, and the one that loses most.</summary>
public static class StripLight
{
    public static StripValue? Now(StudyResult result) =>
        Count(result.Light, OnTargetNow, "on target");

    public static StripValue? Proposed(StudyResult result, OptionResult option, QuantityText text)
    {
        var light = option.Light;
        var loser = light.WorstByArea.Where(stage => stage is { Verdict: LightVerdict.Loses, Change: < 0 }).MinBy(stage => stage.Change);
        var remark = loser is null ? "on target" : $"{result.Study.Areas.First(area => area.Id == loser.Area).Name} {text.Percent(loser.Change!.Value)}";
        return Count(light, Keeps, remark);
    }

    /// <summary>Null where nothing grows; grey where nothing is known of any area.</summary>
    private static StripValue? Count(CropLightResult light, Func<StageLight, bool?> on, string remark)
    {
        var areas = light.Stages.GroupBy(stage => stage.Area).Select(stages => All(stages.Select(on))).ToList();
        if (areas.Count == 0) return null;
        var unknown = areas.Count(area => area is null);
        if (unknown == areas.Count) return new(QuantityText.NotKnown, Unknown: true);
        var said = unknown == 0 || remark != "on target" ? remark : FormattableString.Invariant($"on target, {unknown} not known");
        return new(FormattableString.Invariant($"{areas.Count(area => area == true)} of {areas.Count}"), said);
    }

    private static bool? All(IEnumerable<bool?> stages)
    {
        var list = stages.ToList();
        return list.Contains(false) ? false : list.Contains(null) ? null : true;
    }

    /// <summary>Keeping the light is not enough to be on target: the light may have been too little before.</summary>
    private static bool? Keeps(StageLight stage) => stage.Verdict switch
    {
        LightVerdict.Keeps => stage.TooMuch ? false : Enough(stage.Target, stage.After),
        LightVerdict.Unchanged => OnTargetNow(stage),
        LightVerdict.NotKnown => null,
        _ => false,
    };

    /// <summary>Enough, and not more than wanted.</summary>
    private static bool? OnTargetNow(StageLight stage) => LightWanted.IsTooMuch(stage.Target, stage.Now, stage.Photoperiod) ? false : Enough(stage.Target, stage.Now);

    /// <summary>The least of the target is reached, by day and while lit; null when the light or the target is not known.</summary>
    public static bool? Enough(LightTarget? target, LightFigures? light) => (target, light) switch
    {
        (null, _) or (_, null) => null,
        ({ } wanted, { } has) => (wanted.LeastDaily is not { } daily || has.Daily.CompareTo(daily) >= 0) && (wanted.LeastLight is not { } least || has.Mean >= least),
    };
}
