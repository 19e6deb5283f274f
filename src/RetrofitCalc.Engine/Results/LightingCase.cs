using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Results;

/// <summary>One state of the lighting, evaluated over twelve billing months: as it is, or after an option.</summary>
public sealed record LightingCase
{
    /// <summary>Name: "Now", or the option's.</summary>
    public required string Name { get; init; }

    /// <summary>Each counted survey line.</summary>
    public required IReadOnlyList<LineFigures> Lines { get; init; }

    /// <summary>Sums by area, in the study's order.</summary>
    public required IReadOnlyList<ShareFigures> Areas { get; init; }

    /// <summary>Sums by season name, then "All year" for weekly schedules, then "Between seasons".</summary>
    public required IReadOnlyList<ShareFigures> Seasons { get; init; }

    /// <summary>The whole site; equals the sum of the areas and the sum of the seasons.</summary>
    public required ShareFigures Site { get; init; }

    /// <summary>Twelve bills of the whole meter: base load, lighting and the plant that follows.</summary>
    public required IReadOnlyList<MonthlyBill> Bills { get; init; }

    /// <summary>Highest windows behind the demand charges, month by month.</summary>
    public IReadOnlyList<DemandPeak> Peaks { get; init; } = [];

    /// <summary>Energy of the whole meter in the year: everything else, lighting and the plant that follows.</summary>
    public Energy MeterEnergy { get; init; }

    /// <summary>Lamps, ballasts, tubes falling due within the study period, by date.</summary>
    public required IReadOnlyList<ReplacementEvent> Replacements { get; init; }
}

/// <summary>Power, energy and cost of one survey line.</summary>
public sealed record LineFigures
{
    /// <summary>Id of the survey line.</summary>
    public required string Line { get; init; }

    /// <summary>Luminaires in this state. [count; may be a fraction when new luminaires replace several]</summary>
    public required double Luminaires { get; init; }

    /// <summary>Input of one luminaire with all its lamps lit, and how it is known.</summary>
    public required InputPower PerLuminaire { get; init; }

    /// <summary>Input of the whole line with all switched on; lamps out are counted as the baseline says.</summary>
    public required Power Connected { get; init; }

    /// <summary>Part of <see cref="Connected"/> lost in ballasts; null when not known.</summary>
    public required Power? BallastLoss { get; init; }

    /// <summary>Hours lit in the year, any step.</summary>
    public required OperatingTime Hours { get; init; }

    /// <summary>Times switched on in the year. [count]</summary>
    public required double Starts { get; init; }

    /// <summary>Lighting energy in the year.</summary>
    public required Energy Energy { get; init; }

    /// <summary>Cost in the year, plant included.</summary>
    public required Money Cost { get; init; }

    /// <summary>Clocks of what wears out.</summary>
    public required IReadOnlyList<WearClock> Clocks { get; init; }
}

/// <summary>Input power of one luminaire, ballast loss and evidence.</summary>
/// <param name="Total">Input power.</param>
/// <param name="BallastLoss">Part of it lost in ballasts; null when not known; zero when there is no ballast.</param>
/// <param name="Evidence">Which evidence was used.</param>
/// <param name="Source">Where the value comes from.</param>
public sealed record InputPower(Power Total, Power? BallastLoss, EvidenceKind Evidence, Provenance Source)
{
    /// <summary>Ballast loss over input. [unitless, 0–1]; null when not known.</summary>
    public double? LossShare => BallastLoss is { } loss && Total > Power.Zero ? loss / Total : null;
}

/// <summary>Sums over an area, a season or the site.</summary>
/// <param name="Name">Name of the area or season.</param>
/// <param name="Connected">Input power; for a season, the highest drawn in it.</param>
/// <param name="BallastLoss">Part lost in ballasts; lines of unknown loss are left out.</param>
/// <param name="Hours">Hours with any light.</param>
/// <param name="Lighting">Lighting energy.</param>
/// <param name="Plant">Cooling electricity that follows, less electric heating saved.</param>
/// <param name="FuelTherms">Fuel that the lights' heat makes unnecessary; negative where interaction factors say that cooling burns fuel. [therm]</param>
/// <param name="Cost">Electricity of lighting and plant, less the fuel the lights' heat saves.</param>
public sealed record ShareFigures(
    string Name, Power Connected, Power BallastLoss, OperatingTime Hours,
    Energy Lighting, Energy Plant, double FuelTherms, Money Cost)
{
    /// <summary>Id of the area; null for a season or the site.</summary>
    public string? Id { get; init; }

    /// <summary>Heat of the lights while on, within the conditioned space.</summary>
    public Power Heat { get; init; }

    /// <summary>Water that plants give off by the lights' heat while on; the heat is within <see cref="Heat"/>. [kg/h]</summary>
    public double MoisturePerHour { get; init; }
}
