using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>Light of tubes under the top of a reflecting box, on its base. The middle of the base is the origin.</summary>
/// <remarks>Direct light by the closed forms, point by point; reflected light even over the base (E-59).</remarks>
public static class ShelfLight
{
    /// <summary>Reflected light that is added to every point of the base. [µmol m⁻² s⁻¹]</summary>
    /// <param name="tubes">Tubes near the top, axes along or across: of what does not fall on the base, a bare tube sends half of its output to the top and the rest to the sides.</param>
    /// <param name="box">The shelf, its sides and what is above.</param>
    public static PhotonFluxDensity Reflected(IReadOnlyList<PlacedTube> tubes, ReflectingCavity box) =>
        Reflected([.. tubes.Select(tube => new LightSource(tube))], box);

    /// <summary>Reflected light that is added to every point of the base. [µmol m⁻² s⁻¹]</summary>
    /// <param name="sources">Lamps and luminaires near the top: what they send above their own level falls on the top, what else misses the base on the sides.</param>
    /// <param name="box">The shelf, its sides and what is above.</param>
    public static PhotonFluxDensity Reflected(IReadOnlyList<LightSource> sources, ReflectingCavity box)
    {
        if (sources.Count == 0)
            return PhotonFluxDensity.Zero;
        var floor = new BoxBase(box, sources.Min(source => source.Tube.Height));
        var direct = default(CavityShare);
        foreach (var source in sources)
        {
            var first = First(source, floor.From(source));
            direct = new(direct.Base + first.Base, direct.Sides + first.Sides, direct.Top + first.Top);
        }
        var added = box.Spread(direct).Base - direct.Base;
        return PhotonFluxDensity.FromMicromolesPerSquareMetre(Math.Max(0, added) / (box.Length.Metres * box.Width.Metres));
    }

    /// <summary>Light of all tubes at points of the base, with what the box reflects, in their order. [µmol m⁻² s⁻¹]</summary>
    /// <param name="tubes">Tubes near the top.</param>
    /// <param name="box">The shelf, its sides and what is above.</param>
    /// <param name="points">Places on the base.</param>
    public static IReadOnlyList<PhotonFluxDensity> Over(IReadOnlyList<PlacedTube> tubes, ReflectingCavity box, IEnumerable<PlanePoint> points)
    {
        var reflected = Reflected(tubes, box);
        return [.. LightField.Over(tubes, points).Select(direct => direct + reflected)];
    }

    /// <summary>Where the light of a source falls first, from what falls on the base. [µmol/s]</summary>
    private static CavityShare First(LightSource source, double onBase)
    {
        var output = source.Tube.Output.MicromolesPerSecond;
        var up = source.Upwards.MicromolesPerSecond;
        var below = Math.Min(onBase, output - up);
        return new(below, output - up - below, up);
    }
}
