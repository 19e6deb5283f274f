using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>One way to light a stage that was tried.</summary>
public sealed record LightTry
{
    /// <summary>What gives the light: name of the tube or luminaire.</summary>
    public required string Name { get; init; }

    /// <summary>Its catalogue id.</summary>
    public required string Product { get; init; }

    /// <summary>Height of the lamps over the crop.</summary>
    public required Length Height { get; init; }

    /// <summary>Name of the lit step; null for all lamps.</summary>
    public string? Step { get; init; }

    /// <summary>Light when new.</summary>
    public required LightFigures Light { get; init; }

    /// <summary>Mean light when lamps, tubes or luminaires are due. [µmol m⁻² s⁻¹]</summary>
    public required PhotonFluxDensity MeanAtEnd { get; init; }

    /// <summary>Drawn while the stage is lit, by all luminaires over such benches.</summary>
    public required Power Power { get; init; }

    /// <summary>Whether the target is met when new and at the end; without a target, whether it is no less light than now.</summary>
    public required bool Meets { get; init; }

    /// <summary>Whether it is more light than the target allows.</summary>
    public bool TooMuch { get; init; }

    /// <summary>Lines it changes.</summary>
    public required IReadOnlyList<string> Lines { get; init; }
}

/// <summary>All ways tried to light a stage.</summary>
/// <param name="Tried">All of them, by product, height and step.</param>
/// <param name="Least">The one that meets the target, and is not more than it allows, with the least watts; of those the most even. Null when none does.</param>
/// <param name="Curve">Ways no other beats in both mean light and evenness, the brightest first.</param>
public sealed record LightSearchResult(IReadOnlyList<LightTry> Tried, LightTry? Least, IReadOnlyList<LightTry> Curve)
{
    /// <summary>What stands in the way of a search; null when there was none.</summary>
    public string? Ask { get; init; }
}
