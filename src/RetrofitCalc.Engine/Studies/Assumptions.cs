using NodaTime;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Studies;

/// <summary>Which lamps the present state counts.</summary>
public enum Baseline
{
    /// <summary>All lamps working.</summary>
    AsDesigned,
    /// <summary>Lamps out as surveyed.</summary>
    AsFound,
}

/// <summary>When lamps are changed.</summary>
public enum RelampPolicy
{
    /// <summary>Each lamp when it fails.</summary>
    Spot,
    /// <summary>All together at a share of rated life.</summary>
    Group,
    /// <summary>All together when their light has fallen to a share of that when new.</summary>
    Light,
}

/// <summary>Rates, periods and policies. Each default is shown where it is used; sources in docs/sources.md.</summary>
public sealed record Assumptions
{
    /// <summary>Day the change takes effect; the engine looks at this calendar year.</summary>
    public LocalDate Start { get; init; } = new(2027, 1, 1);

    /// <summary>Length of the comparison. [years, 1–40]</summary>
    public int StudyYears { get; init; } = 10;

    /// <summary>Nominal discount rate. [unitless a year, −0.5 to 1]</summary>
    public double DiscountRate { get; init; } = 0.05;

    /// <summary>Nominal rise of electricity and fuel prices. [unitless a year]</summary>
    public double EnergyEscalation { get; init; } = 0.02;

    /// <summary>Nominal rise of parts and labour. [unitless a year]</summary>
    public double CostEscalation { get; init; } = 0.02;

    /// <summary>Which lamps the present state counts.</summary>
    public Baseline Baseline { get; init; }

    /// <summary>When lamps are changed.</summary>
    public RelampPolicy RelampPolicy { get; init; }

    /// <summary>Share of rated life at which lamps are changed together. [unitless, 0.3–1]</summary>
    public double GroupRelampShare { get; init; } = 0.70;

    /// <summary>Share of the light when new at which lamps are changed together by light. [unitless, 0.5–0.98]</summary>
    public double LightRelampShare { get; init; } = 0.80;

    /// <summary>Maintenance worker, one hour.</summary>
    public Money MaintenanceRate { get; init; } = Money.FromUnits(40);

    /// <summary>Time to change one lamp on call.</summary>
    public OperatingTime SpotLampTime { get; init; } = OperatingTime.FromMinutes(15);

    /// <summary>Time to change one lamp with the whole room.</summary>
    public OperatingTime GroupLampTime { get; init; } = OperatingTime.FromMinutes(3);

    /// <summary>Time to change one ballast; a licensed electrician's.</summary>
    public OperatingTime BallastTime { get; init; } = OperatingTime.FromMinutes(30);

    /// <summary>Licensed electrician, one hour, for ballasts under the present lighting.</summary>
    public Money ElectricianRate { get; init; } = Money.FromUnits(85);

    /// <summary>How far input watts may be off when not measured. [unitless, 0–0.5]</summary>
    public double WattsUncertainty { get; init; } = 0.10;

    /// <summary>How far the price of electricity may be off. [unitless, 0–0.9]</summary>
    public double PriceUncertainty { get; init; } = 0.10;

    /// <summary>How far operating hours may be off. [unitless, 0–0.9]</summary>
    public double HoursUncertainty { get; init; } = 0.10;

    /// <summary>How far first cost may be off without a written offer. [unitless, 0–0.9]</summary>
    public double FirstCostUncertainty { get; init; } = 0.15;

    /// <summary>How far lamp and ballast lives may be off. [unitless, 0–0.9]</summary>
    public double LifeUncertainty { get; init; } = 0.25;

    /// <summary>Seed of every random draw, printed on the summary.</summary>
    public int Seed { get; init; } = 20261;
}
