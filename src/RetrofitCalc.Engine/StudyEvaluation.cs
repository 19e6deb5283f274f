using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.Checks;
using RetrofitCalc.Engine.Economics;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Safety;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Uncertainty;

namespace RetrofitCalc.Engine;

/// <summary>The front door: a complete study in, its result out. Same study, same result, on every machine.</summary>
public static class StudyEvaluation
{
    private static readonly Dictionary<string, Measure> KeepAll = [];

    /// <summary>What makes a study impossible to evaluate; empty when it can be evaluated.</summary>
    /// <param name="study">The study.</param>
    public static IReadOnlyList<StudyProblem> Check(Study study) => StudyCheck.Run(study);

    /// <summary>Evaluates a study.</summary>
    /// <param name="study">A study without problems.</param>
    /// <param name="rules">Safety rules.</param>
    /// <exception cref="InvalidStudyException"><see cref="Check"/> finds problems.</exception>
    public static StudyResult Run(Study study, SafetyRuleBook rules)
    {
        if (Check(study) is { Count: > 0 } problems)
            throw new InvalidStudyException(problems);
        var context = new StudyContext(study);
        var now = CaseEvaluation.Evaluate(context, CaseEvaluation.Now, KeepAll, null, Perturbation.None);
        return new()
        {
            Study = study,
            Now = now,
            Options = [.. study.Options.Select(option => OptionEvaluation.Run(context, now, option))],
            Questions = StudyQuestions.Of(context),
            Notices = SafetyEvaluation.Run(study, rules),
            Remarks = StudyRemarks.Of(context),
        };
    }
}
