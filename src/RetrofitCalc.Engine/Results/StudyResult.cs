using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Results;

/// <summary>Everything the engine answers about a study. Nothing is rounded except bill lines.</summary>
public sealed record StudyResult
{
    /// <summary>The study as it was evaluated.</summary>
    public required Study Study { get; init; }

    /// <summary>The present lighting, kept as it is.</summary>
    public required LightingCase Now { get; init; }

    /// <summary>How the survey stands to the meter; null without meter data.</summary>
    public MeterComparison? Meter { get; init; }

    /// <summary>Light on crops and for people as it is.</summary>
    public required CropLightResult Light { get; init; }

    /// <summary>Each option against <see cref="Now"/>, in the study's order.</summary>
    public required IReadOnlyList<OptionResult> Options { get; init; }

    /// <summary>Facts nobody has given, the most useful first.</summary>
    public required IReadOnlyList<Question> Questions { get; init; }

    /// <summary>Safety notices the chosen option raises, stops first.</summary>
    public required IReadOnlyList<SafetyNotice> Notices { get; init; }

    /// <summary>Conventions and estimates a careful reader must know.</summary>
    public required IReadOnlyList<string> Remarks { get; init; }

    /// <summary>The option asked for: the one named by the study, else the first; null when there is none.</summary>
    public OptionResult? Chosen =>
        Options.FirstOrDefault(o => o.Option.Id == Study.ChosenOption) ?? (Options.Count > 0 ? Options[0] : null);
}

/// <summary>A fact nobody has given.</summary>
/// <param name="Line">Id of the survey line; null when it concerns the whole site.</param>
/// <param name="Field">Property name of the missing fact, such as SupplyVolts.</param>
/// <param name="Text">The question in plain words.</param>
public sealed record Question(string? Line, string Field, string Text);
