namespace RetrofitCalc.Engine;

/// <summary>Something in a study that makes it impossible to evaluate.</summary>
/// <param name="Path">Where it stands, such as Areas[2].Seasons[0].End.</param>
/// <param name="Message">What is wrong, with the value and what is allowed.</param>
public sealed record StudyProblem(string Path, string Message);

/// <summary>A study that cannot be evaluated was given to the engine.</summary>
public sealed class InvalidStudyException : Exception
{
    /// <summary>All problems found.</summary>
    public IReadOnlyList<StudyProblem> Problems { get; }

    /// <summary>Makes the exception.</summary>
    /// <param name="problems">All problems found; at least one.</param>
    public InvalidStudyException(IReadOnlyList<StudyProblem> problems)
        : base(string.Join("\n", problems.Select(p => $"{p.Path}: {p.Message}"))) => Problems = problems;
}
