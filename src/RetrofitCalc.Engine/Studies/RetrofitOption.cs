using NodaTime;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Studies;

/// <summary>A named way to change the lighting.</summary>
public sealed record RetrofitOption
{
    /// <summary>Stable identifier within the study.</summary>
    public required string Id { get; init; }

    /// <summary>Name people use.</summary>
    public required string Name { get; init; }

    /// <summary>What is done on each line; lines not named are kept as they are.</summary>
    public IReadOnlyList<LineMeasure> Measures { get; init; } = [];

    /// <summary>Rates and sums that hold for the whole option.</summary>
    public OptionCosts Costs { get; init; } = new();

    /// <summary>Stages lit in another way than now once the change is made.</summary>
    public IReadOnlyList<StageChange> Stages { get; init; } = [];
}

/// <summary>A stage that an option lights in another way. What is null stays as it is.</summary>
/// <param name="Area">Id of the area.</param>
/// <param name="Season">Name of the season.</param>
/// <param name="Stage">Name of the stage.</param>
public sealed record StageChange(string Area, string Season, string Stage)
{
    /// <summary>Local time at which lights come on.</summary>
    public LocalTime? LightsOn { get; init; }

    /// <summary>Local time at which they go off.</summary>
    public LocalTime? LightsOff { get; init; }

    /// <summary>Name of the lit step; empty for all lamps.</summary>
    public string? LitStep { get; init; }

    /// <summary>Dimming level. [unitless, above 0 to 1]</summary>
    public double? Dimming { get; init; }
}

/// <summary>What is done on one line, and what it costs there.</summary>
/// <param name="Line">Id of the survey line.</param>
/// <param name="Measure">What is done.</param>
public sealed record LineMeasure(string Line, Measure Measure)
{
    /// <summary>Parts for one luminaire; null takes the catalogue's price of what is fitted.</summary>
    public Money? PartsPerLuminaire { get; init; }

    /// <summary>Electrician's time for one luminaire; null takes the default of the measure.</summary>
    public OperatingTime? LabourPerLuminaire { get; init; }

    /// <summary>Incentive for one luminaire.</summary>
    public Money IncentivePerLuminaire { get; init; }

    /// <summary>Height of the lamps over the crop after the change; null leaves it.</summary>
    public Length? Height { get; init; }

    /// <summary>Distance between the rows of this line's luminaires over the bench after the change, by that of now; null leaves them. [unitless, 0.2–5]</summary>
    public double? RowSpread { get; init; }
}

/// <summary>What can be done on a line.</summary>
public abstract record Measure;

/// <summary>Leave it as it is.</summary>
public sealed record KeepAsIs : Measure;

/// <summary>New lamps and ballasts of the same kind.</summary>
public sealed record RenewLikeForLike : Measure;

/// <summary>Direct-wire tubes in the old body, ballasts bypassed.</summary>
/// <param name="Tube">Catalogue id of the tube.</param>
/// <param name="TubesPerLuminaire">Tubes in one luminaire; null for as many as there were lamps. [count]</param>
public sealed record DirectWire(string Tube, int? TubesPerLuminaire = null) : Measure;

/// <summary>New ready-wired luminaires.</summary>
/// <param name="Luminaire">Catalogue id of the luminaire.</param>
/// <param name="PerExisting">New luminaires for each old one. [unitless, above 0]</param>
public sealed record ReplaceLuminaire(string Luminaire, double PerExisting = 1) : Measure;

/// <summary>Rates and sums that hold for a whole option.</summary>
public sealed record OptionCosts
{
    /// <summary>Licensed electrician, one hour.</summary>
    public Money ElectricianRate { get; init; } = Money.FromUnits(85);

    /// <summary>Permits, engineering and other sums that do not grow with the count.</summary>
    public Money FixedSum { get; init; }

    /// <summary>Recycling one lamp.</summary>
    public Money DisposalPerLamp { get; init; } = Money.FromUnits(1);

    /// <summary>Recycling one ballast.</summary>
    public Money DisposalPerBallast { get; init; } = Money.FromUnits(2.5);

    /// <summary>Contingency on parts, labour and disposal. [unitless, 0–1]</summary>
    public double Contingency { get; init; } = 0.10;

    /// <summary>Incentive for each kilowatt-hour saved in the first year.</summary>
    public EnergyPrice IncentivePerKilowattHour { get; init; }

    /// <summary>Highest incentive, as a share of first cost. [unitless, 0–1]; null when there is no cap.</summary>
    public double? IncentiveCap { get; init; }
}
