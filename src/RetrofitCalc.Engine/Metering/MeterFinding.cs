using NodaTime;

namespace RetrofitCalc.Engine.Metering;

/// <summary>Something about meter data that its user should know.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Count">How often: intervals for <see cref="MeterFindingKind.Missing"/>, readings otherwise. [count]</param>
/// <param name="First">The first places, a few at most.</param>
/// <param name="Rule">What was done about it, in plain words.</param>
public sealed record MeterFinding(MeterFindingKind Kind, int Count, IReadOnlyList<MeterPlace> First, string Rule);

/// <summary>Where in the data something was found.</summary>
/// <param name="Time">Local time at the site.</param>
/// <param name="Line">Line or row of the file, from 1; 0 when there is none.</param>
public sealed record MeterPlace(LocalDateTime Time, int Line);

/// <summary>Kinds of finding.</summary>
public enum MeterFindingKind
{
    /// <summary>Intervals between the first and the last reading that no reading covers.</summary>
    Missing,
    /// <summary>The same interval with the same value.</summary>
    SameTwice,
    /// <summary>The same interval with another value.</summary>
    DifferentTwice,
    /// <summary>A reading that stands after a later one in the file.</summary>
    OutOfOrder,
    /// <summary>A reading that begins before the one before has ended.</summary>
    Overlapping,
    /// <summary>A negative value: the site exported.</summary>
    Negative,
    /// <summary>A local time that was skipped when the clocks went forward.</summary>
    NoSuchLocalTime,
    /// <summary>A local time that came twice when the clocks went back.</summary>
    RepeatedHour,
    /// <summary>A reading longer or shorter than most.</summary>
    OtherLength,
    /// <summary>A value that the file says was estimated, edited or questioned.</summary>
    Estimated,
}
