using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>What a verdict over the laid-out part of an area says of the whole area (E-80).</summary>
internal static class UnjudgedLines
{
    /// <summary>
    /// The verdict on the whole area: not known where lines are changed that nobody laid out, unless those that are laid out lose light already.
    /// </summary>
    /// <param name="change">The bench and the option.</param>
    /// <param name="stage">The verdict over the bench.</param>
    public static StageLight Weighed(BenchChange change, StageLight stage)
    {
        if (change.Unjudged is not { Count: > 0 } lines)
            return stage;
        var ask = $"Lay out {string.Join(" and ", lines)} in {change.Bench.Area.Name} too: the option changes the light there, and nobody can tell how.";
        return stage.Verdict == LightVerdict.Loses
            ? stage with { Warnings = [.. stage.Warnings, ask] }
            : stage with
            {
                Verdict = LightVerdict.NotKnown, Change = null, ChangeUncertainty = null, UncertainBy = [], After = null, AtEnd = null,
                BelowTargetAfterYears = null, Unreachable = false, Ask = stage.Ask ?? ask,
            };
    }
}
