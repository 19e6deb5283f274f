namespace RetrofitCalc.Engine.Safety;

/// <summary>One rule: when it applies, what it says, who answers.</summary>
public sealed record SafetyRule
{
    /// <summary>Stable id, such as L01.</summary>
    public required string Id { get; init; }

    /// <summary>Heading.</summary>
    public required string Group { get; init; }

    /// <summary>stop, warn or note.</summary>
    public required Results.NoticeSeverity Severity { get; init; }

    /// <summary>When it applies.</summary>
    public required SafetyCondition When { get; init; }

    /// <summary>The notice.</summary>
    public required string Notice { get; init; }

    /// <summary>The question.</summary>
    public required string Question { get; init; }

    /// <summary>Role codes of who must answer.</summary>
    public IReadOnlyList<string> WhoAnswers { get; init; } = [];

    /// <summary>Source keys.</summary>
    public IReadOnlyList<string> Sources { get; init; } = [];

    /// <summary>firm, likely or disputed.</summary>
    public string Confidence { get; init; } = "";
}

/// <summary>A condition over facts: all of, any of, or one comparison.</summary>
public abstract record SafetyCondition;

/// <summary>True when all parts are.</summary>
/// <param name="Parts">Parts.</param>
public sealed record AllOf(IReadOnlyList<SafetyCondition> Parts) : SafetyCondition;

/// <summary>True when at least one part is.</summary>
/// <param name="Parts">Parts.</param>
public sealed record AnyOf(IReadOnlyList<SafetyCondition> Parts) : SafetyCondition;

/// <summary>One comparison. A missing fact makes it false, save for the operators "unknown" and "not_true".</summary>
/// <param name="Field">Name of the fact.</param>
/// <param name="Operator">eq, ne, in, not_in, lt, le, gt, ge, gt_field, lt_field, unknown, is_true, is_false, not_true.</param>
/// <param name="Values">Values as text; the other field's name for gt_field and lt_field.</param>
public sealed record Comparison(string Field, string Operator, IReadOnlyList<string> Values) : SafetyCondition;

/// <summary>One item of the checklist.</summary>
/// <param name="Id">Stable id, such as A01.</param>
/// <param name="Text">What must be so.</param>
/// <param name="SignedBy">Role code of who signs.</param>
/// <param name="Evidence">Proof to keep.</param>
/// <param name="Always">True when it applies to every conversion.</param>
/// <param name="LinkedRules">It applies when one of these rules does.</param>
public sealed record ChecklistItem(string Id, string Text, string SignedBy, string Evidence, bool Always, IReadOnlyList<string> LinkedRules);
