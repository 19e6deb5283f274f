using NodaTime;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Results;

/// <summary>What wears out.</summary>
public enum WearPart
{
    /// <summary>A fluorescent lamp.</summary>
    Lamp,
    /// <summary>A ballast.</summary>
    Ballast,
    /// <summary>A direct-wire tube.</summary>
    Tube,
    /// <summary>A ready-wired luminaire.</summary>
    Luminaire,
}

/// <summary>Life of one kind of part on one line: its clock.</summary>
/// <param name="Part">Lamp, ballast, tube or luminaire.</param>
/// <param name="Life">Hours between replacements, policy and temperature counted.</param>
/// <param name="Interval">Life over hours a year. [years]; null when the light never burns.</param>
/// <param name="FirstDue">First replacement after the start of the study. [years from start]; null when never.</param>
/// <param name="Basis">How the life was found, in plain words.</param>
public sealed record WearClock(WearPart Part, OperatingTime Life, double? Interval, double? FirstDue, string Basis);

/// <summary>Parts of one line that fall due together.</summary>
/// <param name="Line">Id of the survey line.</param>
/// <param name="Part">What is replaced.</param>
/// <param name="Due">Day it falls due.</param>
/// <param name="YearsFromStart">The same, counted from the start. [years]</param>
/// <param name="Count">Parts replaced. [count]</param>
/// <param name="Cost">Parts, labour and recycling, at prices of the start.</param>
public sealed record ReplacementEvent(string Line, WearPart Part, LocalDate Due, double YearsFromStart, int Count, Money Cost)
{
    /// <summary>True when the price of the part is not known: the cost then holds labour and recycling only.</summary>
    public bool PriceMissing { get; init; }
}
