using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Studies;

/// <summary>The place under study.</summary>
public sealed record Site
{
    /// <summary>Name of the site.</summary>
    public required string Name { get; init; }

    /// <summary>IANA time zone, such as America/New_York.</summary>
    public string TimeZone { get; init; } = "America/New_York";

    /// <summary>Culture of numbers and currency, such as en-US. The engine only carries it.</summary>
    public string Culture { get; init; } = "en-US";

    /// <summary>Country pack for safety rules: us, ca, eu, gb, au or other; null when not said.</summary>
    public string? Jurisdiction { get; init; }

    /// <summary>State, province or member code, upper case; null when not said.</summary>
    public string? Region { get; init; }

    /// <summary>Load of everything else on the meter, taken as constant: a stated base that demand and block prices rest on.</summary>
    public Power BaseLoad { get; init; }

    /// <summary>How the cooling and heating plant answers to the lights' heat.</summary>
    public PlantInteraction Plant { get; init; } = new();
}

/// <summary>Cooling that follows the lights and heating that replaces them, by shares of the year (method "factors").</summary>
/// <remarks>Shares of zero mean an uncooled, unheated site (method "none"). E-05.</remarks>
public sealed record PlantInteraction
{
    /// <summary>Share of lit hours in which the space is cooled. [unitless, 0–1]</summary>
    public double CooledShare { get; init; }

    /// <summary>Cooling delivered over electricity used. [unitless, above 0]</summary>
    public double CoolingCop { get; init; } = 3;

    /// <summary>Share of lit hours in which the space is heated. [unitless, 0–1]</summary>
    public double HeatedShare { get; init; }

    /// <summary>Heat delivered over electricity used, for electric heating; null when heat comes from fuel.</summary>
    public double? HeatingCop { get; init; }

    /// <summary>Furnace or boiler efficiency, for fuel heating. [unitless, 0–1]</summary>
    public double FurnaceEfficiency { get; init; } = 0.8;

    /// <summary>Price of one therm of fuel.</summary>
    public Money FuelPricePerTherm { get; init; }
}
