using NodaTime;

namespace RetrofitCalc.Engine.Studies;

/// <summary>What people have said about safety.</summary>
public sealed record SafetyRecord
{
    /// <summary>Facts the survey grid does not hold, by the rule file's field name.</summary>
    public IReadOnlyList<SafetyFact> Facts { get; init; } = [];

    /// <summary>Answers to notices.</summary>
    public IReadOnlyList<NoticeAnswer> Answers { get; init; } = [];

    /// <summary>Checklist items someone has answered.</summary>
    public IReadOnlyList<ChecklistAnswer> Checklist { get; init; } = [];
}

/// <summary>One fact about a line, or about the whole site.</summary>
/// <param name="Line">Id of the survey line; null for the whole site.</param>
/// <param name="Field">Field name in the rule file.</param>
/// <param name="Value">Value as text: a word of the field's list, a number with a point, true or false.</param>
public sealed record SafetyFact(string? Line, string Field, string Value);

/// <summary>An answer to a notice on one line.</summary>
/// <param name="Rule">Id of the rule.</param>
/// <param name="Line">Id of the survey line; null for the whole site.</param>
/// <param name="Text">What was answered.</param>
/// <param name="Role">Role code of who answered, from the rule file.</param>
/// <param name="Person">Name as signed.</param>
/// <param name="Date">Day of the answer.</param>
public sealed record NoticeAnswer(string Rule, string? Line, string Text, string Role, string Person, LocalDate Date);

/// <summary>An answered checklist item.</summary>
/// <param name="Item">Id of the item.</param>
/// <param name="Role">Role code of who answered.</param>
/// <param name="Person">Name as signed.</param>
/// <param name="Date">Day of the answer.</param>
/// <param name="Evidence">Where the proof is kept.</param>
public sealed record ChecklistAnswer(string Item, string Role, string Person, LocalDate Date, string Evidence = "");
