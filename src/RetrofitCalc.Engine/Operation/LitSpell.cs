using RetrofitCalc.Engine.Heat;

namespace RetrofitCalc.Engine.Operation;

/// <summary>A time without interruption in which an area's lights burn at one step and level.</summary>
/// <param name="Start">First instant. [s since 1970]</param>
/// <param name="End">Instant after the last. [s since 1970]</param>
/// <param name="Mode">Season, stage, step and level.</param>
public readonly record struct LitSpell(long Start, long End, LitMode Mode)
{
    /// <summary>Length. [h]</summary>
    public double Hours => (End - Start) / 3600.0;
}

/// <summary>How an area's lights burn.</summary>
/// <param name="Season">Season of the day the lights came on, or <see cref="AllYear"/>.</param>
/// <param name="Stage">Stage of that day; null for weekly schedules.</param>
/// <param name="Step">Name of the lit step; null for all lamps.</param>
/// <param name="Dimming">Level. [unitless, above 0 to 1]</param>
public sealed record LitMode(string Season, string? Stage, string? Step, double Dimming)
{
    /// <summary>Season name of weekly schedules.</summary>
    public const string AllYear = "All year";

    /// <summary>What the plant does meanwhile. Reports show what differs in this alone as one.</summary>
    public PlantMode Plant { get; init; }

    /// <summary>Name for what belongs to no season.</summary>
    public const string BetweenSeasons = "Between seasons";
}
