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

    /// <summary>Power factor of the whole meter, from a bill. [unitless, 0.3–1]; null when not known.</summary>
    public double? PowerFactor { get; init; }

    /// <summary>Grid region whose emission factors apply, such as CAMX; null when not said.</summary>
    public string? GridRegion { get; init; }

    /// <summary>How the cooling and heating plant answers to the lights' heat.</summary>
    public PlantInteraction Plant { get; init; } = new();
}
