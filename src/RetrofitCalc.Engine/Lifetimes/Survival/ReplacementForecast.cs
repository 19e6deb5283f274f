using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Lifetimes.Survival;

/// <summary>Replacements to expect of a group of parts: counts spread over time, not all in one year.</summary>
/// <remarks>
/// E-88. Spot: n · M(t) of E-87 from the ages at the start. Group: until the first change the same; after it all parts are new, each
/// full interval T brings n · M_new(T) failures and a change of n parts, and what is left of the time n · M_new(rest). A group
/// change on the last day of the study is left out, as on the calendar of plain intervals (<see cref="PlainInterval"/>).
/// To wire it in: one group for each <see cref="Results.WearClock"/>, life = rated life of its basis (before the share of group
/// relamping), shape = <see cref="LifeShape.Of"/>, ages from the survey line, and one <see cref="RenewalFunction"/> kept for each shape.
/// </remarks>
public sealed class ReplacementForecast
{
    private readonly PartGroup _parts;
    private readonly ReplacementPolicy _policy;
    private readonly RenewalFunction _renewals;

    /// <summary>A forecast.</summary>
    /// <param name="parts">The parts.</param>
    /// <param name="policy">When they are replaced.</param>
    /// <param name="horizon">Hours from the start up to which it will be asked.</param>
    /// <param name="renewals">Renewal function of their shape that reaches so far; null makes one.</param>
    public ReplacementForecast(PartGroup parts, ReplacementPolicy policy, OperatingTime horizon, RenewalFunction? renewals = null)
    {
        (_parts, _policy) = (parts, policy);
        _renewals = renewals ?? RenewalFunction.For(parts.Life, LongestRun(policy, horizon));
    }

    /// <summary>Expected replacements year by year.</summary>
    /// <param name="parts">The parts.</param>
    /// <param name="policy">When they are replaced.</param>
    /// <param name="years">Years of the study. [count]</param>
    /// <param name="renewals">Renewal function of their shape that reaches so far; null makes one.</param>
    public static IReadOnlyList<ExpectedYear> ByYear(PartGroup parts, ReplacementPolicy policy, int years, RenewalFunction? renewals = null)
    {
        var forecast = new ReplacementForecast(parts, policy, parts.HoursPerYear * years, renewals);
        var groups = PlainInterval.GroupsByYear(parts, policy, years);
        var ends = Enumerable.Range(0, years + 1).Select(year => forecast.SpotUntil(parts.HoursPerYear * year)).ToList();
        return [.. Enumerable.Range(1, years).Select(year => new ExpectedYear(year, ends[year] - ends[year - 1], groups[year - 1]))];
    }

    /// <summary>Parts expected to fail between two moments, for instance within a season.</summary>
    /// <param name="from">Hours burned since the start at its beginning.</param>
    /// <param name="to">Hours burned since the start at its end.</param>
    public ExpectedCount SpotBetween(OperatingTime from, OperatingTime to) => SpotUntil(to) - SpotUntil(from);

    /// <summary>Parts expected to fail from the start on.</summary>
    /// <param name="burned">Hours burned since the start.</param>
    public ExpectedCount SpotUntil(OperatingTime burned)
    {
        if (_policy is not GroupReplacement group || burned <= group.First) return FromStart(burned);
        var since = burned.Hours - group.First.Hours;
        var cycles = Math.Floor(since / group.Interval.Hours);
        var rest = OperatingTime.FromHours(Math.Max(0, since - cycles * group.Interval.Hours));
        return FromStart(group.First) + (cycles > 0 ? FromNew(group.Interval) * cycles : default) + FromNew(rest);
    }

    private ExpectedCount FromStart(OperatingTime burned) => _renewals.Failures(_parts.Life, _parts.Ages, burned) * _parts.Count;

    private ExpectedCount FromNew(OperatingTime burned) =>
        burned > OperatingTime.Zero ? _renewals.Failures(_parts.Life, AgeMix.New, burned) * _parts.Count : default;

    private static OperatingTime LongestRun(ReplacementPolicy policy, OperatingTime horizon) => policy is GroupReplacement group
        ? OperatingTime.FromHours(Math.Min(horizon.Hours, Math.Max(group.First.Hours, group.Interval.Hours)))
        : horizon;
}
