using MathNet.Numerics.Integration;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>The base of a box in up to 64 × 64 Gauss–Legendre places, to add up what falls on it.</summary>
/// <remarks>
/// Light of lamps at height h is smooth over a distance of h, so that the error of n places over a half side a falls with ρ^(−2n), ρ = h/a + √(h²/a² + 1):
/// lamps high over a small base need few places.
/// </remarks>
internal sealed class BoxBase
{
    private const int FewestPlaces = 8, MostPlaces = 64; // powers of two: whole groups of points
    private const double ErrorLeft = 1e-9;

    private readonly PlanePoint[] _points;
    private readonly double[] _areas;
    private readonly PointLanes _lanes;

    public BoxBase(ReflectingCavity box, Length lowest)
    {
        (double At, double Weight)[] along = Places(box.Length.Metres / 2, lowest.Metres), across = Places(box.Width.Metres / 2, lowest.Metres);
        _points = [.. across.SelectMany(y => along.Select(x => new PlanePoint(x.At, y.At)))];
        _areas = [.. across.SelectMany(y => along.Select(x => x.Weight * y.Weight))];
        _lanes = new(_points);
    }

    /// <summary>What falls on the base directly. [µmol/s]</summary>
    public double From(LightSource source) => source.Distribution is null
        ? new TubeField([source.Tube]).On(_lanes, _areas)
        : source.Over(_points).Zip(_areas, (light, area) => light.MicromolesPerSquareMetre * area).Sum();

    private static (double, double)[] Places(double half, double height)
    {
        var needed = -Math.Log(ErrorLeft) / 2 / Math.Asinh(height / half);
        var order = FewestPlaces;
        while (order < MostPlaces && order < needed) order *= 2;
        var rule = new GaussLegendreRule(-half, half, order);
        return [.. Enumerable.Range(0, order).Select(index => (rule.GetAbscissa(index), rule.GetWeight(index)))];
    }
}
