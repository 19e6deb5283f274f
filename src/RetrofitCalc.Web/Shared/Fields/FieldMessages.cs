using RetrofitCalc.Engine;

namespace RetrofitCalc.Web.Shared.Fields;

/// <summary>What is wrong at one place of the study: texts that could not be read, then what the engine refuses.</summary>
public static class FieldMessages
{
    public static IReadOnlyList<(string Name, string Typed, string Text)> Under(StudySession session, string path) =>
    [
        .. session.State.Drafts.Where(d => d.Line == path).Select(d => (d.Field, d.Text, d.Message)),
        .. session.Problems.Where(p => IsAt(p, path)).Select(p => (NameOf(p, path), "", p.Message)),
    ];

    public static bool Any(StudySession session, string path) => Under(session, path).Count > 0;

    /// <summary>At the place itself or at one of its own properties, not deeper in one of its lists.</summary>
    private static bool IsAt(StudyProblem problem, string path) =>
        problem.Path == path || (problem.Path.StartsWith(path + ".", StringComparison.Ordinal) && !problem.Path[(path.Length + 1)..].Contains('['));

    private static string NameOf(StudyProblem problem, string path) => problem.Path == path ? "" : problem.Path[(path.Length + 1)..];
}
