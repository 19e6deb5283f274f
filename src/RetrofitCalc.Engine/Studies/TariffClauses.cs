using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Studies;

/// <summary>What a poor power factor costs. The site's power factor is the user's, from a bill.</summary>
public abstract record PowerFactorClause
{
    /// <summary>Names of the demand charges it changes; all when empty.</summary>
    public IReadOnlyList<string> On { get; init; } = [];
}

/// <summary>Demand is billed in kilovolt-amperes: kW / PF.</summary>
public sealed record BilledInKilovoltAmperes : PowerFactorClause;

/// <summary>Below a target, demand is billed as kW · target / PF.</summary>
/// <param name="Target">Target power factor. [unitless, 0.5–1]</param>
public sealed record TargetPowerFactor(double Target) : PowerFactorClause;

/// <summary>Below a threshold, demand grows by a share for each point (0.01) of power factor that is missing.</summary>
/// <param name="Threshold">Power factor from which nothing is added. [unitless, 0.5–1]</param>
/// <param name="SharePerPoint">Share of demand added for each point. [unitless, 0–0.1]</param>
public sealed record AddedPerPoint(double Threshold, double SharePerPoint) : PowerFactorClause;

/// <summary>Reactive demand above a share of the real demand costs a price of its own, on a line of its own.</summary>
/// <param name="FreeShare">Reactive over real demand that is free. [kvar/kW, 0–1]</param>
/// <param name="PricePerKilovar">Price of a kilovar for a month above it.</param>
public sealed record ReactiveAboveShare(double FreeShare, DemandPrice PricePerKilovar) : PowerFactorClause;

/// <summary>A credit for each whole hour of use (kWh over billed kW) above a number of hours.</summary>
/// <param name="Name">Name on the bill.</param>
/// <param name="AboveHours">Hours of use from which it counts. [h a month]</param>
/// <param name="PricePerKilowatt">Credit for a kilowatt of billed demand and hour above.</param>
public sealed record LoadFactorCredit(string Name, double AboveHours, DemandPrice PricePerKilowatt)
{
    /// <summary>Name of the demand charge whose billed demand counts; null for the first in force.</summary>
    public string? Demand { get; init; }
}

/// <summary>A percentage on other lines.</summary>
/// <param name="Name">Name on the bill.</param>
/// <param name="Rate">Share of the lines. [unitless, −1 to 1]</param>
public sealed record BillTax(string Name, double Rate)
{
    /// <summary>Names of the charges it falls on, blocks included, or "Reactive demand" or "Minimum bill" for those lines; all lines when empty.</summary>
    public IReadOnlyList<string> On { get; init; } = [];
}
