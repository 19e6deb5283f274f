using System.Numerics;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>Points laid out so that several are worked on at a time; the last group is filled up with the last point.</summary>
internal sealed class PointLanes
{
    private readonly double[] _x, _y;

    public PointLanes(PlanePoint[] points)
    {
        Count = points.Length;
        Groups = (Count + Vector<double>.Count - 1) / Vector<double>.Count;
        (_x, _y) = (new double[Groups * Vector<double>.Count], new double[Groups * Vector<double>.Count]);
        for (var at = 0; at < _x.Length; at++) (_x[at], _y[at]) = points[Math.Min(at, Count - 1)];
    }

    public int Count { get; }

    public int Groups { get; }

    public Vector<double> X(int group) => new(_x, group * Vector<double>.Count);

    public Vector<double> Y(int group) => new(_y, group * Vector<double>.Count);
}
