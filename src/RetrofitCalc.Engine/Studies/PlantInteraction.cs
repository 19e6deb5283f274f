using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Studies;

/// <summary>How the effect of the lights' heat on cooling and heating is worked out.</summary>
public enum PlantMethod
{
    /// <summary>Shares of the lit hours cooled and heated. Shares of zero mean an uncooled, unheated space.</summary>
    Shares,
    /// <summary>Published interaction factors of a kind of building.</summary>
    InteractionFactors,
    /// <summary>Hour by hour, from the study's weather year.</summary>
    Hourly,
    /// <summary>A sealed room, cooled whenever its lights burn.</summary>
    SealedRoom,
}

/// <summary>How cooling and heating answer to the lights' heat (E-05).</summary>
public sealed record PlantInteraction
{
    /// <summary>How it is worked out.</summary>
    public PlantMethod Method { get; init; }

    /// <summary>Share of lit hours in which the space is cooled. [unitless, 0–1]; used by shares.</summary>
    public double CooledShare { get; init; }

    /// <summary>Cooling delivered over electricity used. [unitless, above 0]</summary>
    public double CoolingCop { get; init; } = 3;

    /// <summary>Share of lit hours in which the space is heated. [unitless, 0–1]; used by shares.</summary>
    public double HeatedShare { get; init; }

    /// <summary>Heat delivered over electricity used, for electric heating; null when heat comes from fuel.</summary>
    public double? HeatingCop { get; init; }

    /// <summary>Furnace or boiler efficiency, for fuel heating. [unitless, 0–1]</summary>
    public double FurnaceEfficiency { get; init; } = 0.8;

    /// <summary>Price of one therm of fuel.</summary>
    public Money FuelPricePerTherm { get; init; }

    /// <summary>Outdoor temperature from which the space is cooled. [°C]; used hourly.</summary>
    public double CoolingBalance { get; init; } = 12;

    /// <summary>Outdoor temperature below which the space is heated. [°C]; used hourly.</summary>
    public double HeatingBalance { get; init; } = 8;

    /// <summary>Outdoor temperature up to which outside air cools without a machine. [°C]; null without an economiser; used hourly.</summary>
    public double? EconomiserLimit { get; init; }

    /// <summary>Electricity kept of each lighting kilowatt-hour saved. [unitless, 0–2]; used by interaction factors.</summary>
    public double InteractionFactor { get; init; } = 1;

    /// <summary>Fuel for each lighting kilowatt-hour saved; negative when heating must make up for it. [therm/kWh]; used by interaction factors.</summary>
    public double InteractionTherms { get; init; }

    /// <summary>Kind of building the interaction factors are of, with their source.</summary>
    public string? InteractionBuilding { get; init; }

    /// <summary>Share of the lights' heat in the space that plants turn into moisture. [unitless, 0–0.9]; the total is unchanged.</summary>
    public double LatentShare { get; init; }
}
