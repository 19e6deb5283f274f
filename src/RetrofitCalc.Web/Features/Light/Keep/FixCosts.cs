using RetrofitCalc.Engine;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Safety;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Reports;

namespace RetrofitCalc.Web.Features.Light.Keep;

/// <summary>What a way to keep the light does to the whole study, worked out anew with the change in the option.</summary>
/// <param name="Cost">Yearly cost more than without it, as the strip prints both.</param>
/// <param name="TooLittle">Stages of the same area that then have too little light: what hangs over a bench lights them all.</param>
/// <param name="AtFirst">How many of its stages then have enough when new and too little before lamps are due.</param>
public sealed record FixOutcome(Money Cost, IReadOnlyList<StageLight> TooLittle, int AtFirst = 0)
{
    /// <summary>"Every stage here then keeps its light." or which do not.</summary>
    public string Stages => TooLittle switch
    {
        [] when AtFirst > 0 => FormattableString.Invariant($"Every stage here then has enough when new, {AtFirst} not until lamps are due."),
        [] => "Every stage here then keeps its light.",
        [var one] => $"Then too little light in {one.Season}, {one.Stage}.",
        [var first, ..] => FormattableString.Invariant($"Then too little light in {first.Season}, {first.Stage} and {TooLittle.Count - 1} more."),
    };
}

/// <summary>Works whole options out, off the page.</summary>
public static class FixCosts
{
    /// <summary>Null where the study with the fix cannot be worked out.</summary>
    public static FixOutcome? Of(StudyResult result, OptionResult option, (string Area, LightFix Fix) change, SafetyRuleBook rules)
    {
        if (Evaluate(LightFixes.Apply(result.Study, option.Option.Id, change.Area, change.Fix), option.Option.Id, rules) is not { } with) return null;
        var here = with.Light.Stages.Where(stage => stage.Area == change.Area).ToList();
        return new(PrintedSums.Cost(with.After) - PrintedSums.Cost(option.After),
            [.. here.Where(stage => stage.Verdict == LightVerdict.Loses)], here.Count(stage => stage.Verdict == LightVerdict.KeepsAtFirst));
    }

    /// <summary>One option of a study, alone; null where the study has problems.</summary>
    public static OptionResult? Evaluate(Study study, string option, SafetyRuleBook rules)
    {
        var alone = study with { Options = [.. study.Options.Where(o => o.Id == option)], ChosenOption = option };
        return StudyEvaluation.Check(alone).Count > 0 ? null : StudyEvaluation.Run(alone, rules).Options[0];
    }
}
