using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Results;

/// <summary>How heavy a notice is.</summary>
public enum NoticeSeverity
{
    /// <summary>Do not order, switch on or start until the named person has answered.</summary>
    Stop,
    /// <summary>Answer before ordering.</summary>
    Warn,
    /// <summary>For information.</summary>
    Note,
}

/// <summary>A notice some lines of the survey raise.</summary>
/// <param name="Rule">Id of the rule.</param>
/// <param name="Group">Heading it stands under.</param>
/// <param name="Severity">How heavy it is.</param>
/// <param name="Text">The notice.</param>
/// <param name="Question">The question to answer.</param>
/// <param name="WhoAnswers">Role codes of who must answer.</param>
/// <param name="Sources">Source keys.</param>
/// <param name="Lines">Ids of the survey lines that raise it; empty when it concerns the whole site.</param>
/// <param name="Answers">Answers so far.</param>
public sealed record SafetyNotice(
    string Rule, string Group, NoticeSeverity Severity, string Text, string Question,
    IReadOnlyList<string> WhoAnswers, IReadOnlyList<string> Sources,
    IReadOnlyList<string> Lines, IReadOnlyList<NoticeAnswer> Answers)
{
    /// <summary>True until every line that raises it has an answer.</summary>
    public bool Open => Lines.Count == 0
        ? Answers.Count == 0
        : !Lines.All(line => Answers.Any(a => a.Line is null || a.Line == line));
}
