using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Catalogue;

/// <summary>What a ballast is built from.</summary>
public enum BallastTechnology
{
    /// <summary>Choke and transformer at mains frequency.</summary>
    Magnetic,
    /// <summary>High-frequency electronics.</summary>
    Electronic,
}

/// <summary>How the lamps of one ballast are joined.</summary>
public enum LampCircuit
{
    /// <summary>One failed lamp darkens all.</summary>
    Series,
    /// <summary>The other lamps go on.</summary>
    Parallel,
}

/// <summary>A ballast that feeds fluorescent lamps.</summary>
public sealed record Ballast : CatalogueEntry
{
    /// <summary>Magnetic or electronic.</summary>
    public required BallastTechnology Technology { get; init; }

    /// <summary>How it starts its lamps.</summary>
    public required StartMethod StartMethod { get; init; }

    /// <summary>How its lamps are joined; null when not known.</summary>
    public LampCircuit? Circuit { get; init; }

    /// <summary>Light relative to the reference ballast. [unitless, 0.4–1.4]; null when not known.</summary>
    public double? BallastFactor { get; init; }

    /// <summary>Ballast luminous efficiency: lamp arc power over input power. [unitless, 0–1]; null when not known.</summary>
    public double? LuminousEfficiency { get; init; }

    /// <summary>Power drawn while energised with every lamp out or dark; null when not known.</summary>
    public Power? LampsOutPower { get; init; }

    /// <summary>Rated life at <see cref="RatedCaseTemperature"/>; null when not known.</summary>
    public OperatingTime? RatedLife { get; init; }

    /// <summary>Case temperature of the rated life. [°C]; null when not known.</summary>
    public double? RatedCaseTemperature { get; init; }

    /// <summary>Whether it dims its lamps; null when not known, then it is taken not to.</summary>
    public bool? Dims { get; init; }

    /// <summary>Price of one ballast; null when not known.</summary>
    public Money? Price { get; init; }
}
