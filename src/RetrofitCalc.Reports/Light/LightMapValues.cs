using MathNet.Numerics.Interpolation;
using RetrofitCalc.Engine.CropLight;

namespace RetrofitCalc.Reports;

/// <summary>Light between the points of a map.</summary>
public static class LightMapValues
{
    private const int Fine = 40;

    /// <summary>Straight between the four points around a place; beyond the map the value of its edge.</summary>
    public static double At(this LightMap map, PlanePoint at)
    {
        var (column, x) = Around(map.X, at.X);
        var (row, y) = Around(map.Y, at.Y);
        double Along(int r) => map.Light[r, column] + (map.Light[r, Math.Min(column + 1, map.X.Count - 1)] - map.Light[r, column]) * x;
        return Along(row) + (Along(Math.Min(row + 1, map.Y.Count - 1)) - Along(row)) * y;
    }

    /// <summary>A coarse map drawn smooth: through its values, and never above the highest or below the lowest of its neighbours.</summary>
    public static LightMap Smooth(this LightMap map)
    {
        if (map.IsFine() || map.X.Count < 2 || map.Y.Count < 2) return map;
        double[] x = Finer(map.X), y = Finer(map.Y);
        var along = new double[map.Y.Count, x.Length];
        for (var row = 0; row < map.Y.Count; row++)
            Through(map.X, [.. Enumerable.Range(0, map.X.Count).Select(column => map.Light[row, column])], x, (at, value) => along[row, at] = value);
        var values = new double[y.Length, x.Length];
        for (var column = 0; column < x.Length; column++)
            Through(map.Y, [.. Enumerable.Range(0, map.Y.Count).Select(row => along[row, column])], y, (at, value) => values[at, column] = value);
        return new(x, y, values);
    }

    /// <summary>A model's map is so fine that the half cell up to the edges of the bench hardly shows.</summary>
    public static bool IsFine(this LightMap map) => map.X.Count >= Fine || map.Y.Count >= Fine;

    /// <summary>A map of cell middles up to the edges of its bench: half a cell more, going on as the last two cells do.</summary>
    public static LightMap ToEdges(this LightMap map, double length, double width)
    {
        double[] x = [-length / 2, .. map.X, length / 2], y = [-width / 2, .. map.Y, width / 2];
        var values = new double[y.Length, x.Length];
        for (var row = 0; row < y.Length; row++)
            for (var column = 0; column < x.Length; column++)
                values[row, column] = Math.Max(0, Beyond(map, row - 1, column - 1));
        return new(x, y, values);
    }

    private static double Beyond(LightMap map, int row, int column)
    {
        var (r, rNext) = Ends(row, map.Y.Count);
        var (c, cNext) = Ends(column, map.X.Count);
        return map.Light[r, c] + (map.Light[r, c] - map.Light[rNext, c]) / 2 + (map.Light[r, c] - map.Light[r, cNext]) / 2;
    }

    /// Within the map a cell is its own neighbour, so that nothing is added.
    private static (int At, int Next) Ends(int index, int count) =>
        index < 0 ? (0, Math.Min(1, count - 1)) : index >= count ? (count - 1, Math.Max(0, count - 2)) : (index, index);

    private static void Through(IReadOnlyList<double> places, double[] values, double[] wanted, Action<int, double> put)
    {
        IInterpolation line = places.Count > 2 ? CubicSpline.InterpolatePchipSorted([.. places], values) : LinearSpline.InterpolateSorted([.. places], values);
        for (var at = 0; at < wanted.Length; at++) put(at, line.Interpolate(wanted[at]));
    }

    private static double[] Finer(IReadOnlyList<double> places)
    {
        var parts = Math.Max(1, Fine / (places.Count - 1));
        return [.. Enumerable.Range(0, (places.Count - 1) * parts + 1).Select(i => Between(places, i / parts, i % parts / (double)parts))];
    }

    private static double Between(IReadOnlyList<double> places, int at, double share) =>
        share == 0 ? places[at] : places[at] + (places[at + 1] - places[at]) * share;

    private static (int Low, double Share) Around(IReadOnlyList<double> places, double at)
    {
        if (at <= places[0] || places.Count == 1) return (0, 0);
        if (at >= places[^1]) return (places.Count - 1, 0);
        var low = places.ToList().FindLastIndex(place => place <= at);
        return (low, (at - places[low]) / (places[low + 1] - places[low]));
    }
}
