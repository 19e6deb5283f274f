using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>Light over a bench now and after, for pictures on one scale, and how the model meets the readings.</summary>
public sealed record StageMaps
{
    /// <summary>Id of the area.</summary>
    public required string Area { get; init; }

    /// <summary>Id of the option; null for the present alone.</summary>
    public string? Option { get; init; }

    /// <summary>Light now.</summary>
    public required LightMap Now { get; init; }

    /// <summary>Light after the change, when new; null without an option, or where it is not known.</summary>
    public LightMap? After { get; init; }

    /// <summary>Lowest and highest light of both: the ends of the scale. [µmol m⁻² s⁻¹]</summary>
    public required (PhotonFluxDensity Low, PhotonFluxDensity High) Scale { get; init; }

    /// <summary>Height of the lamps over the crop now, and after.</summary>
    public required (Length Now, Length After) Heights { get; init; }

    /// <summary>The model; null where the maps are the readings themselves.</summary>
    public FittedLight? Fit { get; init; }

    /// <summary>Every reading with what the model says there; empty without a model.</summary>
    public IReadOnlyList<MetReading> Readings { get; init; } = [];

    /// <summary>What the maps rest on, in plain words.</summary>
    public required string RestsOn { get; init; }
}

/// <summary>A reading and the model.</summary>
/// <param name="Set">Id of the set.</param>
/// <param name="Height">Height of the lamps over the sensor.</param>
/// <param name="Reading">What was read.</param>
/// <param name="Residual">(Model − read) / read; a reading below a tenth of its set's mean weighed as that tenth. [unitless]</param>
public sealed record MetReading(string Set, Length Height, LightReading Reading, double Residual);
