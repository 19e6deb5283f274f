using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>Share of the light of luminaires under a ceiling that reaches the plane people work on (E-72).</summary>
/// <remarks>
/// The room between plane and lamps is a box with diffuse surfaces (E-59). Light sent down spreads as from a diffuse ceiling: F of it falls on
/// the plane, the rest on the walls; light sent up falls on the ceiling first. Furniture is not in it.
/// </remarks>
internal sealed record RoomUtilisation(ReflectingCavity Room, bool ReflectancesTaken)
{
    /// <summary>Floor, walls and ceiling where nobody has looked: the set that tables of utilisation use most (common practice). [unitless]</summary>
    public static readonly CavityShare UsualReflectance = new(0.2, 0.5, 0.7);

    /// <summary>Floor area. [m²]</summary>
    public double SquareMetres => Room.Length.Metres * Room.Width.Metres;

    /// <summary>The room of an area; null where its size is not known.</summary>
    /// <param name="light">Size and reflectances.</param>
    /// <param name="lampsAbove">Lamps over the plane; null when not known.</param>
    public static RoomUtilisation? Of(AreaLight light, Length? lampsAbove) =>
        light is { BenchLength: { Metres: > 0 } length, BenchWidth: { Metres: > 0 } width } && lampsAbove is { Metres: > 0 } height
            ? new(new(length, width, height, light.Surroundings?.Reflectance ?? UsualReflectance), light.Surroundings is null)
            : null;

    /// <summary>Coefficient of utilisation. [unitless]</summary>
    /// <param name="emission">How the lamps send out their light; a bare tube sends half of it up.</param>
    public double Share(TubeEmission emission)
    {
        var up = emission == TubeEmission.BareTube ? 0.5 : 0;
        return Room.Spread(new((1 - up) * Room.TopToBase, (1 - up) * (1 - Room.TopToBase), up)).Base;
    }
}
