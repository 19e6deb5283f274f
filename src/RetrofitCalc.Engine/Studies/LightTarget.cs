using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Studies;

/// <summary>How a crop answers to the length of the day.</summary>
public enum DayLengthResponse
{
    /// <summary>Nobody has said.</summary>
    NotKnown,
    /// <summary>Not at all.</summary>
    Neutral,
    /// <summary>It needs short days: light at night spoils it.</summary>
    ShortDay,
    /// <summary>Long days change its growth, such as bolting.</summary>
    LongDay,
}

/// <summary>Light a crop wants in a stage: by the day, or while lit. A bound that is null is not set.</summary>
public sealed record LightTarget
{
    /// <summary>Name of the crop and stage in the table it was taken from, or an own one.</summary>
    public required string Crop { get; init; }

    /// <summary>Least light of a day. [mol m⁻² d⁻¹]</summary>
    public DailyLight? LeastDaily { get; init; }

    /// <summary>Most light of a day. [mol m⁻² d⁻¹]</summary>
    public DailyLight? MostDaily { get; init; }

    /// <summary>Least light while lit. [µmol m⁻² s⁻¹]</summary>
    public PhotonFluxDensity? LeastLight { get; init; }

    /// <summary>Most light while lit. [µmol m⁻² s⁻¹]</summary>
    public PhotonFluxDensity? MostLight { get; init; }

    /// <summary>Fewest lit hours of a day. [h, 0–24]</summary>
    public OperatingTime? FewestHours { get; init; }

    /// <summary>Most lit hours of a day. [h, 0–24]</summary>
    public OperatingTime? MostHours { get; init; }

    /// <summary>How it answers to the length of the day.</summary>
    public DayLengthResponse DayLength { get; init; }

    /// <summary>Where the target comes from.</summary>
    public required Provenance Source { get; init; }

    /// <summary>True when the source is a weak one: a summary, or a grower's guide.</summary>
    public bool WeakSource { get; init; }

    /// <summary>What to know about it.</summary>
    public string Note { get; init; } = "";
}
