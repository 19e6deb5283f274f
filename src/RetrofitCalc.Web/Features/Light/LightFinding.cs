using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Reports;

namespace RetrofitCalc.Web.Features.Light;

/// <summary>Sentences about light on the crop.</summary>
public static class LightWords
{
    public static string Title(StudyResult? result)
    {
        if (LightPlace.LightOf(result) is not { Worst: { } worst } light) return "Light on the crop";
        var stages = light.WorstByArea;
        var worstStage = stages.First(stage => stage.Verdict == worst);
        var name = AreaName(result!.Study, worstStage);
        return worst switch
        {
            LightVerdict.Loses => Loses(result.Study, name, worstStage),
            LightVerdict.NotKnown when stages.All(stage => stage.Verdict == LightVerdict.NotKnown) => "Whether the crop keeps its light is not known",
            LightVerdict.NotKnown => $"Whether {name} keep{(Many(name) ? "" : "s")} {Their(name)} light is not known",
            LightVerdict.KeepsAtFirst => AtFirst(result.Study, name, worstStage),
            LightVerdict.Keeps => "Every growing area keeps its light",
            _ => result.Chosen is null ? "Every growing area has the light it wants" : "Nothing changes in the light on the crop",
        };
    }

    public static string Lead(StudyResult? result)
    {
        if (LightPlace.LightOf(result) is not { Worst: { } worst } light) return "No area of this study grows a crop. Say so in the survey where one does; its stages stand with the schedules.";
        var stage = light.WorstByArea.First(s => s.Verdict == worst);
        if (stage.Ask is { } ask) return ask;
        var text = QuantityText.For(result!.Study);
        var fix = stage.Fixes.Count > 0 ? $" {stage.Fixes[0].Text} would keep it." : "";
        return $"{stage.Season}, {stage.Stage}: {Days(stage, text)}{TargetSentence(stage.Target, text)}{fix}";
    }

    public static string AreaName(Study study, StageLight stage) => study.Areas.First(area => area.Id == stage.Area).Name;

    /// <summary>"Loses 13 % ± 4 %, below target".</summary>
    public static string Verdict(StageLight stage, QuantityText text) => stage.Verdict switch
    {
        LightVerdict.Loses when stage.Change is < 0 and var change => $"Loses {text.Percent(-change)}{Within(stage, text)}, {(stage.Target is null ? "no target set" : "below target")}",
        LightVerdict.Loses => "Too little light, below target",
        LightVerdict.KeepsAtFirst when stage.BelowTargetAfterYears is { } years => $"Enough at first, below target after {text.Years(years)}",
        LightVerdict.KeepsAtFirst => "Enough at first, below target before the lamps are due",
        LightVerdict.Keeps => $"Keeps its light{Changed(stage, text)}",
        LightVerdict.Unchanged => "Nothing changes",
        _ => QuantityText.NotKnown,
    };

    public static string Change(StageLight stage, QuantityText text) =>
        stage.Change is { } change ? $"{(change > 0.005 ? "+" : "")}{text.Percent(change)}{Within(stage, text)}" : QuantityText.NotKnown;

    /// <summary>What the crop wants, such as "12–18" or "60 µmol while lit".</summary>
    public static string Target(LightTarget? target, QuantityText text)
    {
        if (target is null) return QuantityText.NotKnown;
        if (Bounds(target.LeastDaily?.MolesPerSquareMetre, target.MostDaily?.MolesPerSquareMetre, v => text.Number(v, 1)) is { } daily) return daily;
        return Bounds(target.LeastLight?.MicromolesPerSquareMetre, target.MostLight?.MicromolesPerSquareMetre, v => text.Number(v)) is { } light
            ? $"{light} µmol/m²·s" : QuantityText.NotKnown;
    }

    private static string? Bounds(double? least, double? most, Func<double, string> write) => (least, most) switch
    {
        ({ } low, { } high) => $"{write(low)}–{write(high)}",
        ({ } low, null) => $"{write(low)} or more",
        (null, { } high) => $"{write(high)} or less",
        _ => null,
    };

    private static string Loses(Study study, string name, StageLight stage) => stage.Change is < 0 and var change
        ? $"{name} would lose {QuantityText.For(study).Percent(-change)} of {Their(name)} light{(stage.Target is null ? "" : ", and fall below target")}"
        : $"{name} would have too little light, as {(Many(name) ? "they have" : "it has")} now";

    private static string AtFirst(Study study, string name, StageLight stage) => stage.BelowTargetAfterYears is { } years
        ? $"{name} would have enough light at first, and too little after {QuantityText.For(study).Number(years, 1)} years"
        : $"{name} would have enough light at first, and too little before the lamps are due";

    private static string Days(StageLight stage, QuantityText text) => (stage.Now, stage.After) switch
    {
        ({ } now, { } after) when now.Daily != after.Daily => $"the day's light {(after.Daily.CompareTo(now.Daily) < 0 ? "falls" : "rises")} from {text.Number(now.Daily.MolesPerSquareMetre, 1)} to {text.Number(after.Daily.MolesPerSquareMetre, 1)} mol/m².",
        ({ } now, _) => $"a day gives {text.Number(now.Daily.MolesPerSquareMetre, 1)} mol/m².",
        _ => $"the day's light is {QuantityText.NotKnown}.",
    };

    private static string TargetSentence(LightTarget? target, QuantityText text) =>
        target is null ? " No target is set for this stage." : $" The target is {Target(target, text)}{(target.LeastDaily is null && target.MostDaily is null ? "" : " mol/m²")}.";

    private static string Changed(StageLight stage, QuantityText text) => stage.Change is null ? "" : $" ({Change(stage, text)})";

    private static string Within(StageLight stage, QuantityText text) => stage.ChangeUncertainty is { } off ? $" ± {text.Percent(off)}" : "";

    private static bool Many(string name) => name.EndsWith('s');

    private static string Their(string name) => Many(name) ? "their" : "its";
}
