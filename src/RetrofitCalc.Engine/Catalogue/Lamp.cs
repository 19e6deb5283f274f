using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Catalogue;

/// <summary>How a ballast starts its lamps.</summary>
public enum StartMethod
{
    /// <summary>High voltage on cold cathodes.</summary>
    Instant,
    /// <summary>Cathodes heated all the time.</summary>
    Rapid,
    /// <summary>Cathodes heated before the arc strikes.</summary>
    Programmed,
    /// <summary>Separate starter switch.</summary>
    Preheat,
}

/// <summary>A fluorescent lamp.</summary>
public sealed record Lamp : CatalogueEntry
{
    /// <summary>Bulb family, such as T8, T12, T5HO.</summary>
    public required string Family { get; init; }

    /// <summary>Lampholder base, such as G13, G5, R17d, Fa8.</summary>
    public required string Base { get; init; }

    /// <summary>Nominal length.</summary>
    public required Length Length { get; init; }

    /// <summary>Power printed on the lamp.</summary>
    public required Power NominalPower { get; init; }

    /// <summary>Rated arc power at high frequency; null when not known.</summary>
    public Power? ArcPower { get; init; }

    /// <summary>Light after 100 h; null when not known.</summary>
    public LuminousFlux? InitialFlux { get; init; }

    /// <summary>Mean light over mean initial light. [unitless, 0–1]; null when not known.</summary>
    public double? MeanOverInitial { get; init; }

    /// <summary>Photons 400–700 nm when new; null when not known.</summary>
    public PhotonFlux? PhotonFlux { get; init; }

    /// <summary>Rated life (half the lamps have failed), by hours per start and start method.</summary>
    public IReadOnlyList<LampLife> Lives { get; init; } = [];

    /// <summary>Price of one lamp; null when not known.</summary>
    public Money? Price { get; init; }

    /// <summary>Mercury in one lamp. [mg]; null when not known.</summary>
    public double? MercuryMilligrams { get; init; }
}

/// <summary>One rated life of a lamp.</summary>
/// <param name="HoursPerStart">Test cycle: hours lit at each start. [h]</param>
/// <param name="StartMethod">Start method of the test ballast; null when the sheet names none.</param>
/// <param name="Life">Hours after which half the lamps have failed.</param>
public sealed record LampLife(double HoursPerStart, StartMethod? StartMethod, OperatingTime Life);
