using MathNet.Numerics.Integration;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>The base of a box in 64 × 64 Gauss–Legendre places, to add up what falls on it.</summary>
internal sealed class BoxBase
{
    private const int Order = 64; // a power of two: whole groups of points

    private readonly PlanePoint[] _points;
    private readonly double[] _areas;
    private readonly PointLanes _lanes;

    public BoxBase(ReflectingCavity box)
    {
        (double At, double Weight)[] along = Places(box.Length.Metres / 2), across = Places(box.Width.Metres / 2);
        _points = [.. across.SelectMany(y => along.Select(x => new PlanePoint(x.At, y.At)))];
        _areas = [.. across.SelectMany(y => along.Select(x => x.Weight * y.Weight))];
        _lanes = new(_points);
    }

    /// <summary>What falls on the base directly. [µmol/s]</summary>
    public double From(LightSource source) => source.Distribution is null
        ? new TubeField([source.Tube]).On(_lanes, _areas)
        : source.Over(_points).Zip(_areas, (light, area) => light.MicromolesPerSquareMetre * area).Sum();

    private static (double, double)[] Places(double half)
    {
        var rule = new GaussLegendreRule(-half, half, Order);
        return [.. Enumerable.Range(0, Order).Select(index => (rule.GetAbscissa(index), rule.GetWeight(index)))];
    }
}
