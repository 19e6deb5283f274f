using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Cases;

/// <summary>What all cases of one study share, worked out once: areas and catalogue rows by id, and when each area is lit.</summary>
public sealed class StudyContext
{
    /// <summary>Builds the context.</summary>
    /// <param name="study">A study without problems.</param>
    public StudyContext(Study study) => Study = study;

    /// <summary>The study.</summary>
    public Study Study { get; }
}
