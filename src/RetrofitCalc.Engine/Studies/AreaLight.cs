using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Studies;

/// <summary>What is known of the light in an area. Alike benches, shelves or tiers are described once, by one of them.</summary>
/// <remarks>Places are counted from the middle of the bench: x along its length, y across. [m]</remarks>
public sealed record AreaLight
{
    /// <summary>Length of the bench, shelf or floor that should be lit; null when nobody has said.</summary>
    public Length? BenchLength { get; init; }

    /// <summary>Its width; null when nobody has said.</summary>
    public Length? BenchWidth { get; init; }

    /// <summary>Surfaces around it that throw light back; null for an open bench, or where nobody has looked.</summary>
    public Surroundings? Surroundings { get; init; }

    /// <summary>The luminaires over one bench.</summary>
    public IReadOnlyList<LuminairePlace> Layout { get; init; } = [];

    /// <summary>Sets of readings, each at one height.</summary>
    public IReadOnlyList<ReadingSet> Readings { get; init; } = [];

    /// <summary>Air at the lamps while lit, not of the room. [°C, −30 to 80]; null when not measured.</summary>
    public double? AirAtLamps { get; init; }

    /// <summary>Light lost to dirt between two cleanings. [unitless, 0–0.9]</summary>
    public double DirtLoss { get; init; } = 0.05;

    /// <summary>Time between cleanings. [months, 1–120]</summary>
    public int CleaningMonths { get; init; } = 12;

    /// <summary>Light that reaches other areas from this one.</summary>
    public IReadOnlyList<StrayLight> Stray { get; init; } = [];

    /// <summary>What people do here; null where light for people is not asked about.</summary>
    public PeopleLight? People { get; init; }
}

/// <summary>Surfaces that throw light back to the bench.</summary>
/// <param name="Height">From the bench to what is above the lamps.</param>
/// <param name="Reflectance">Shares of light thrown back: bench, sides, what is above. [unitless, 0–0.99]</param>
public sealed record Surroundings(Length Height, CavityShare Reflectance);

/// <summary>Where a luminaire hangs over the bench.</summary>
/// <param name="Line">Id of the survey line that counts it.</param>
/// <param name="Centre">The point straight below its middle. [m]</param>
/// <param name="AxisDegrees">Its lamps from the length of the bench towards its width: 0 lies along. [degrees]</param>
public sealed record LuminairePlace(string Line, PlanePoint Centre, double AxisDegrees = 0)
{
    /// <summary>Distance between neighbouring lamps within the luminaire.</summary>
    public Length LampSpacing { get; init; } = Length.FromMetres(0.1);

    /// <summary>Higher than the height of a reading set or measure, which is that of the lowest; 0 for the lowest. [m]</summary>
    public double HigherBy { get; init; }

    /// <summary>Aim, turned about the lamp's axis from straight down. [degrees, −90 to 90]</summary>
    public double TiltDegrees { get; init; }
}

/// <summary>Light of an area that falls on the plants of another.</summary>
/// <param name="Onto">Id of the area it reaches.</param>
/// <param name="Light">Read there with only this area's lights on. [µmol m⁻² s⁻¹]</param>
public sealed record StrayLight(string Onto, PhotonFluxDensity Light);

/// <summary>Light people work by.</summary>
/// <param name="Task">Id of a recommended value, see <c>TaskLights</c>; null with an own value.</param>
/// <param name="Illuminance">Mean illuminance wanted where it is not the recommended one. [lx]</param>
public sealed record PeopleLight(string? Task, Illuminance? Illuminance = null)
{
    /// <summary>Height of the lamps over the plane people work on; null for the survey line's mounting height.</summary>
    public Length? LampsAbovePlane { get; init; }
}
