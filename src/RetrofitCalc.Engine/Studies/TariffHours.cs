using NodaTime;

namespace RetrofitCalc.Engine.Studies;

/// <summary>When a charge applies: part of the year, and hours by kind of day.</summary>
public sealed record TariffHours
{
    /// <summary>First day; null together with <see cref="End"/> means all year.</summary>
    public AnnualDate? Start { get; init; }

    /// <summary>Last day, included; it may lie before the start and so cross New Year.</summary>
    public AnnualDate? End { get; init; }

    /// <summary>Windows in which the charge applies; empty means all hours that no other charge of the same dates claims.</summary>
    public IReadOnlyList<TariffWindow> Windows { get; init; } = [];
}

/// <summary>Kinds of day a tariff tells apart.</summary>
public enum DayKind
{
    /// <summary>Every day.</summary>
    All,
    /// <summary>Monday to Friday, holidays left out.</summary>
    Weekday,
    /// <summary>Saturday, Sunday and holidays.</summary>
    Weekend,
}

/// <summary>Hours on a kind of day.</summary>
/// <param name="Days">Kind of day.</param>
/// <param name="From">Local time it begins.</param>
/// <param name="To">Local time it ends; midnight means the end of the day. It does not run past midnight.</param>
public sealed record TariffWindow(DayKind Days, LocalTime From, LocalTime To);
