namespace RetrofitCalc.Engine.Safety;

/// <summary>Rules, checklist and roles, as data. Loaded outside the engine; the evaluator is in this folder.</summary>
public sealed record SafetyRuleBook
{
    /// <summary>Rules in file order.</summary>
    public IReadOnlyList<SafetyRule> Rules { get; init; } = [];

    /// <summary>Facts the rules ask about.</summary>
    public IReadOnlyList<SafetyField> Fields { get; init; } = [];

    /// <summary>Value of a field when nobody has given one.</summary>
    public IReadOnlyDictionary<string, string> Defaults { get; init; } = new Dictionary<string, string>();

    /// <summary>Role code to plain name.</summary>
    public IReadOnlyDictionary<string, string> Roles { get; init; } = new Dictionary<string, string>();

    /// <summary>Source key to citation.</summary>
    public IReadOnlyDictionary<string, SafetySource> Sources { get; init; } = new Dictionary<string, SafetySource>();

    /// <summary>Checklist by phase.</summary>
    public IReadOnlyList<ChecklistPhase> Checklist { get; init; } = [];

    /// <summary>Dates after which lamps may not be made or sold, by place.</summary>
    public IReadOnlyList<PhaseOutDate> PhaseOutDates { get; init; } = [];

    /// <summary>Sentence printed on every sheet.</summary>
    public string Disclaimer { get; init; } = "";
}

/// <summary>Where a rule comes from.</summary>
/// <param name="Citation">Author, title, year.</param>
/// <param name="Status">How it was read: SEEN, SEEN2 (in a copy), MEM (memory), CP (common practice).</param>
public sealed record SafetySource(string Citation, string Status);

/// <summary>A fact the rules ask about.</summary>
/// <param name="Name">Name in the rule file.</param>
/// <param name="Type">enum, bool, number, text, date.</param>
/// <param name="Values">Allowed words of an enum.</param>
/// <param name="Meaning">What it says, in plain words.</param>
public sealed record SafetyField(string Name, string Type, IReadOnlyList<string> Values, string Meaning);

/// <summary>A date in a phase-out.</summary>
/// <param name="Place">Country or treaty.</param>
/// <param name="What">Lamps concerned.</param>
/// <param name="Date">Day, as ISO text; empty where none is set.</param>
/// <param name="Effect">What ends.</param>
/// <param name="Status">How it was read.</param>
/// <param name="Note">Remark.</param>
public sealed record PhaseOutDate(string Place, string What, string Date, string Effect, string Status, string Note);

/// <summary>Checklist items of one phase.</summary>
/// <param name="Phase">Name of the phase.</param>
/// <param name="Items">Its items.</param>
public sealed record ChecklistPhase(string Phase, IReadOnlyList<ChecklistItem> Items);
