using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Lifetimes.Survival;

/// <summary>When parts are replaced. A part that fails is replaced at once under either policy.</summary>
public abstract record ReplacementPolicy;

/// <summary>Each part when it fails, and no other.</summary>
public sealed record SpotReplacement : ReplacementPolicy;

/// <summary>All parts together at an interval, whatever their age, and each that fails in between.</summary>
/// <remarks>
/// Relamping by light is the same with the hours after which light has fallen so far
/// (<see cref="Studies.RelampPolicy.Light"/>). Parts fitted singly are changed again with the rest: block replacement, S-92.
/// </remarks>
public sealed record GroupReplacement : ReplacementPolicy
{
    /// <summary>An interval and the first change.</summary>
    /// <param name="interval">Hours between two changes; above zero.</param>
    /// <param name="first">Hours from the start to the first change; zero when it is due at once.</param>
    /// <exception cref="ArgumentOutOfRangeException">The interval is zero.</exception>
    public GroupReplacement(OperatingTime interval, OperatingTime first)
    {
        Interval = interval > OperatingTime.Zero ? interval : throw new ArgumentOutOfRangeException(nameof(interval), interval.Hours, "Must be above zero.");
        First = first;
    }

    /// <summary>Hours between two changes.</summary>
    public OperatingTime Interval { get; }

    /// <summary>Hours from the start to the first change.</summary>
    public OperatingTime First { get; }

    /// <summary>At a share of rated life, counted from the last change.</summary>
    /// <param name="rated">Rated life.</param>
    /// <param name="share">Share of it. [unitless, above 0]</param>
    /// <param name="sinceLast">Hours burned since all were last changed; overdue is due at once.</param>
    public static GroupReplacement At(OperatingTime rated, double share, OperatingTime sinceLast)
    {
        var interval = RatedLives.GroupRelamp(rated, share);
        return new(interval, sinceLast < interval ? OperatingTime.FromHours(interval.Hours - sinceLast.Hours) : OperatingTime.Zero);
    }
}
