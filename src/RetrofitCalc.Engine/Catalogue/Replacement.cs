using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Catalogue;

/// <summary>Which ends of a direct-wire tube are fed.</summary>
public enum TubeFeed
{
    /// <summary>Supply at one end only.</summary>
    SingleEnd,
    /// <summary>One conductor at each end.</summary>
    DoubleEnd,
}

/// <summary>What a tube or luminaire that replaces ballasted lamps has in common.</summary>
public abstract record Replacement : CatalogueEntry
{
    /// <summary>Rated line power, driver included.</summary>
    public required Power LinePower { get; init; }

    /// <summary>Nominal length.</summary>
    public required Length Length { get; init; }

    /// <summary>Light when new; null when not known.</summary>
    public LuminousFlux? Flux { get; init; }

    /// <summary>Photons 400–700 nm when new; null when not known.</summary>
    public PhotonFlux? PhotonFlux { get; init; }

    /// <summary>Rated life, to 70 % of initial light unless the note says otherwise; null when not known.</summary>
    public OperatingTime? RatedLife { get; init; }

    /// <summary>Hours the light sources were tested; a projection beyond six times this is not quoted. Null when not known.</summary>
    public OperatingTime? TestHours { get; init; }

    /// <summary>Power factor. [unitless, 0–1]; null when not known.</summary>
    public double? PowerFactor { get; init; }

    /// <summary>Total harmonic distortion of the current. [%]; null when not known.</summary>
    public double? HarmonicDistortionPercent { get; init; }

    /// <summary>Lowest and highest supply voltage; null when not known.</summary>
    public VoltageRange? Voltage { get; init; }

    /// <summary>Location the product is listed for; null when not known.</summary>
    public LocationClass? Location { get; init; }

    /// <summary>Whether the product dims; null when not known.</summary>
    public bool? Dims { get; init; }

    /// <summary>Price of one; null when not known.</summary>
    public Money? Price { get; init; }
}

/// <summary>A tube wired straight to the supply, the ballast bypassed.</summary>
public sealed record DirectWireTube : Replacement
{
    /// <summary>Lampholder base it fits, such as G13 or G5.</summary>
    public required string Base { get; init; }

    /// <summary>Which ends are fed; null when the sheet does not say.</summary>
    public TubeFeed? Feed { get; init; }
}

/// <summary>A complete luminaire that replaces the old body.</summary>
public sealed record ReadyWiredLuminaire : Replacement;

/// <summary>Supply voltages a product accepts.</summary>
/// <param name="Lowest">Lowest. [V]</param>
/// <param name="Highest">Highest. [V]</param>
public sealed record VoltageRange(double Lowest, double Highest);

/// <summary>How wet a place is.</summary>
public enum LocationClass
{
    /// <summary>Not normally damp.</summary>
    Dry,
    /// <summary>Moderately moist, partly protected.</summary>
    Damp,
    /// <summary>Splashed, hosed or misted.</summary>
    Wet,
}
