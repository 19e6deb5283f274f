using NodaTime;

namespace RetrofitCalc.Engine.Studies;

/// <summary>A room, rack or bench whose lights share one schedule.</summary>
public sealed record Area
{
    /// <summary>Stable identifier within the study.</summary>
    public required string Id { get; init; }

    /// <summary>Name people use.</summary>
    public required string Name { get; init; }

    /// <summary>Whether plants grow here.</summary>
    public bool GrowsCrop { get; init; }

    /// <summary>Growing seasons; used when <see cref="GrowsCrop"/>. Seasons of one area may not overlap.</summary>
    public IReadOnlyList<Season> Seasons { get; init; } = [];

    /// <summary>Weekly hours all year; used when no crop grows here. Null when not known.</summary>
    public WeeklySchedule? Weekly { get; init; }

    /// <summary>Share of the lights' heat released in the conditioned space. [unitless, 0–1]</summary>
    public double HeatInSpace { get; init; } = 1;

    /// <summary>Cooling and heating of this area; null for the site's.</summary>
    public PlantInteraction? Plant { get; init; }

    /// <summary>Expected case temperature of ballasts here. [°C]; null for the rated one.</summary>
    public double? BallastCaseTemperature { get; init; }

    /// <summary>Light on the bench or floor; null when nobody has looked.</summary>
    public AreaLight? Light { get; init; }
}

/// <summary>Part of the year in which something grows. It may cross New Year.</summary>
public sealed record Season
{
    /// <summary>Name; seasons of the same name in several areas are reported together.</summary>
    public required string Name { get; init; }

    /// <summary>First day.</summary>
    public required AnnualDate Start { get; init; }

    /// <summary>Last day, included.</summary>
    public required AnnualDate End { get; init; }

    /// <summary>Stages, one after the other from the first day. The last may have no length and fills the rest.</summary>
    public IReadOnlyList<Stage> Stages { get; init; } = [];
}

/// <summary>What a controller does on the nights the clocks change.</summary>
public enum ClockRule
{
    /// <summary>It follows the wall clock: the lit day is an hour shorter or longer.</summary>
    FollowsClock,
    /// <summary>It counts hours: the lit day keeps its length.</summary>
    CountsHours,
}

/// <summary>Part of a season with one photoperiod.</summary>
public sealed record Stage
{
    /// <summary>Name, such as "rooting".</summary>
    public required string Name { get; init; }

    /// <summary>Length. [days]; null fills the rest of the season.</summary>
    public int? Days { get; init; }

    /// <summary>Local time at which lights come on.</summary>
    public required LocalTime LightsOn { get; init; }

    /// <summary>Local time at which they go off; the same as <see cref="LightsOn"/> means lit day and night; earlier means past midnight.</summary>
    public required LocalTime LightsOff { get; init; }

    /// <summary>Days on which lights come on; all when empty.</summary>
    public IReadOnlyList<IsoDayOfWeek> DaysOfWeek { get; init; } = [];

    /// <summary>Name of the lit step; null for all lamps.</summary>
    public string? LitStep { get; init; }

    /// <summary>Dimming level, applied to set-ups that dim. [unitless, above 0 to 1]</summary>
    public double Dimming { get; init; } = 1;

    /// <summary>What happens when the clocks change.</summary>
    public ClockRule ClockRule { get; init; }

    /// <summary>Light the crop wants; null when nobody has said.</summary>
    public LightTarget? Target { get; init; }
}

/// <summary>Hours by day of the week, with holidays.</summary>
public sealed record WeeklySchedule
{
    /// <summary>Lit spells; spells of one day may not overlap.</summary>
    public IReadOnlyList<WeeklyHours> Hours { get; init; } = [];

    /// <summary>Dates without light, whatever the weekday.</summary>
    public IReadOnlyList<Holiday> Holidays { get; init; } = [];
}

/// <summary>A lit spell on some days of the week.</summary>
/// <param name="Days">Days on which it begins.</param>
/// <param name="On">Local time lights come on.</param>
/// <param name="Off">Local time they go off; the same means day and night; earlier means past midnight.</param>
public sealed record WeeklyHours(IReadOnlyList<IsoDayOfWeek> Days, LocalTime On, LocalTime Off);
