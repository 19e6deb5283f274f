using RetrofitCalc.Engine;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Studies;

namespace RetrofitCalc.Cli;

/// <summary>Writes a changed study, but never one that cannot be evaluated.</summary>
internal static class StudyOutput
{
    public static int Write(Study study, string path)
    {
        if (StudyEvaluation.Check(study) is { Count: > 0 } problems)
            return Refusal.Of(problems.Select(problem => $"{problem.Path}: {problem.Message}"));
        OutputFile.Write(path, StudyFile.Write(study));
        return ExitCode.Done;
    }
}
