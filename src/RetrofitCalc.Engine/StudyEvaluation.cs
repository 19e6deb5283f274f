using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Safety;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine;

/// <summary>The front door: a complete study in, its result out. Same study, same result, on every machine.</summary>
public static class StudyEvaluation
{
    /// <summary>What makes a study impossible to evaluate; empty when it can be evaluated.</summary>
    /// <param name="study">The study.</param>
    public static IReadOnlyList<StudyProblem> Check(Study study) => [];

    /// <summary>Evaluates a study.</summary>
    /// <param name="study">A study without problems.</param>
    /// <param name="rules">Safety rules.</param>
    /// <exception cref="InvalidStudyException"><see cref="Check"/> finds problems.</exception>
    public static StudyResult Run(Study study, SafetyRuleBook rules) => throw new NotImplementedException(study.Name);
}
