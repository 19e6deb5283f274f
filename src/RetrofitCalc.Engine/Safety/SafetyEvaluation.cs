using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Safety;

/// <summary>Notices the survey raises.</summary>
public static class SafetyEvaluation
{
    /// <summary>Evaluates all rules.</summary>
    /// <param name="study">The study.</param>
    /// <param name="rules">The rules.</param>
    public static IReadOnlyList<SafetyNotice> Run(Study study, SafetyRuleBook rules) => [];
}
