using NodaTime;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Studies;

/// <summary>Part a luminaire plays when the supply fails.</summary>
public enum EmergencyRole
{
    /// <summary>None: someone has made sure.</summary>
    None,
    /// <summary>Lights an exit route.</summary>
    ExitRoute,
    /// <summary>Holds a battery ballast.</summary>
    BatteryBallast,
    /// <summary>Fed from an emergency circuit.</summary>
    EmergencyCircuit,
}

/// <summary>A group of like luminaires in one area. Null means nobody has said.</summary>
public sealed record SurveyLine
{
    /// <summary>Stable identifier within the study.</summary>
    public required string Id { get; init; }

    /// <summary>Name people use, such as "Shelves, tiers 1–2".</summary>
    public string Name { get; init; } = "";

    /// <summary>Id of the area.</summary>
    public required string Area { get; init; }

    /// <summary>Catalogue id of the existing set-up; until it is known the line is asked about and not counted.</summary>
    public string? SetUp { get; init; }

    /// <summary>Luminaires. [count]; until it is known the line is asked about and not counted.</summary>
    public int? Count { get; init; }

    /// <summary>Lamps found dark or missing, over the whole line; on a series ballast the lamps darkened with the failed one count too. [count]</summary>
    public int? LampsOut { get; init; }

    /// <summary>Ballasts found dead, over the whole line; their dark lamps are among <see cref="LampsOut"/>. [count]; null when nobody has said.</summary>
    public int? DeadBallasts { get; init; }

    /// <summary>Height of the luminaire over the crop, or over the floor where no crop grows.</summary>
    public Length? MountingHeight { get; init; }

    /// <summary>Supply voltage at the luminaire. [V]</summary>
    public double? SupplyVolts { get; init; }

    /// <summary>Start method read on the ballast.</summary>
    public StartMethod? StartMethod { get; init; }

    /// <summary>Year the ballast was made or fitted.</summary>
    public int? BallastYear { get; init; }

    /// <summary>Day the present lamps were fitted.</summary>
    public LocalDate? LampsInstalled { get; init; }

    /// <summary>Hours the present lamps have burned; wins over <see cref="LampsInstalled"/>.</summary>
    public OperatingTime? BurnHours { get; init; }

    /// <summary>How wet the place is.</summary>
    public LocationClass? Location { get; init; }

    /// <summary>Part it plays when the supply fails.</summary>
    public EmergencyRole? Emergency { get; init; }

    /// <summary>Input power read at one luminaire.</summary>
    public PowerReading? Reading { get; init; }

    /// <summary>Remark.</summary>
    public string Note { get; init; } = "";
}

/// <summary>A meter reading at one luminaire.</summary>
/// <param name="Power">Input power with all lamps lit.</param>
/// <param name="Date">Day it was read.</param>
public sealed record PowerReading(Power Power, LocalDate Date)
{
    /// <summary>Current read with it. [A]; null when not read.</summary>
    public double? Amperes { get; init; }
}
