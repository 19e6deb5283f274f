using NodaTime;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Billing;

/// <summary>What the meter shows for one billing month.</summary>
/// <param name="Month">Calendar month that holds the middle of the billing month.</param>
/// <param name="Energy">Energy under each energy charge of the tariff, in its order; null where the charge is not in force that month.</param>
/// <param name="Peaks">Highest window average under each demand charge, in its order; null where the charge is not in force that month.</param>
public sealed record MeteredMonth(YearMonth Month, IReadOnlyList<Energy?> Energy, IReadOnlyList<Power?> Peaks)
{
    /// <summary>First day.</summary>
    public LocalDate First { get; init; } = Month.OnDayOfMonth(1);

    /// <summary>Last day, included.</summary>
    public LocalDate Last { get; init; } = Month.ToDateInterval().End;

    /// <summary>Energy under each adjustment, in the tariff's order; null where it is not in force that month.</summary>
    public IReadOnlyList<Energy?> Adjustments { get; init; } = [];

    /// <summary>Share of the month's days on which each energy charge is in force, in the tariff's order; all of it when empty. [unitless, 0–1]</summary>
    public IReadOnlyList<double> EnergyShares { get; init; } = [];

    /// <summary>Share of the month's days on which each demand charge is in force, in the tariff's order; all of it when empty. [unitless, 0–1]</summary>
    public IReadOnlyList<double> DemandShares { get; init; } = [];

    /// <summary>Days of the month. [count]</summary>
    public int Days => Period.DaysBetween(First, Last) + 1;
}

/// <summary>What a bill depends on besides the tariff and the meter.</summary>
/// <param name="PriceFactor">Factor on every price. [unitless, above 0]</param>
/// <param name="PowerFactor">Power factor of the whole meter. [unitless, 0.3–1]; null when not known, which a tariff with a power-factor clause does not allow.</param>
/// <param name="Before">Twelve billing months before the first, which a ratchet looks back to; null for a steady year, which follows itself.</param>
public sealed record BillTerms(double PriceFactor = 1, double? PowerFactor = null, IReadOnlyList<MeteredMonth>? Before = null)
{
    /// <summary>A steady year at the tariff's prices.</summary>
    public static BillTerms Steady { get; } = new();
}
