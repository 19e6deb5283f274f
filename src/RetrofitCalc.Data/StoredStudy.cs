using NodaTime;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Data;

/// <param name="Revision">Number of the save that was read; a save must name it.</param>
/// <param name="DraftsJson">What was typed but is not yet a value, as the pages keep it.</param>
public sealed record StoredStudy(Guid Id, int Revision, Study Study, string DraftsJson, Instant Updated, bool Archived);

/// <summary>One line of the list of studies.</summary>
/// <param name="Figures">Null until the study was evaluated.</param>
public sealed record StudyHeadline(Guid Id, string Name, bool Invented, Instant Updated, bool Archived, StudyHeadlineFigures? Figures);

/// <summary>Figures of the list, as last evaluated.</summary>
/// <param name="Payback">Simple payback in years; null when it never pays back or there is no option.</param>
public sealed record StudyHeadlineFigures(Power Now, Power Proposed, Money CostNow, Money CostProposed, double? Payback, int OpenStops)
{
    public string Currency { get; init; } = "USD";
    public string Culture { get; init; } = "en-US";
    public string OptionName { get; init; } = "";
    public Energy EnergyNow { get; init; }
    public Energy EnergyProposed { get; init; }
    public double? PaybackLow { get; init; }
    public double? PaybackHigh { get; init; }
}

/// <summary>How a save ended.</summary>
public abstract record SaveOutcome
{
    private SaveOutcome() { }

    public sealed record Saved(int NewRevision) : SaveOutcome;

    /// <summary>Someone else saved first; nothing was written. Both versions can be shown to the second writer.</summary>
    public sealed record Conflict(StoredStudy Current) : SaveOutcome;

    /// <summary>The study was deleted meanwhile; nothing was written.</summary>
    public sealed record Missing : SaveOutcome;
}

/// <summary>An earlier state of a study, without its content.</summary>
public sealed record StudyRevision(Guid Id, Guid StudyId, int Revision, RevisionKind Kind, string Note, Instant At);
