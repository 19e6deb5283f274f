using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>How much area each reading stands for. Only the ratios count.</summary>
/// <remarks>Readings from the middle outwards crowd there; their plain mean is too high (E-55).</remarks>
public static class AreaWeights
{
    /// <summary>Centres of equal cells: all the same.</summary>
    /// <param name="count">Number of readings. [count, at least 1]</param>
    /// <exception cref="ArgumentOutOfRangeException">No readings.</exception>
    public static IReadOnlyList<double> OfCells(int count) => [.. Enumerable.Repeat(1.0, Require.Count(count))];

    /// <summary>
    /// Readings at the crossings of lines (trapezoid rule), row by row: a row for each y, a reading for each x. A quadrant from the middle
    /// to the edge has the same weights, since its three mirror images do not change a mean over area.
    /// </summary>
    /// <param name="x">Places along a row, rising. [m, at least 2]</param>
    /// <param name="y">Places of the rows, rising. [m, at least 2]</param>
    /// <exception cref="ArgumentException">Fewer than two, or not rising.</exception>
    public static IReadOnlyList<double> OfNodes(IReadOnlyList<double> x, IReadOnlyList<double> y)
    {
        var (across, down) = (Halves(x, nameof(x)), Halves(y, nameof(y)));
        return [.. down.SelectMany(row => across.Select(column => row * column))];
    }

    /// <summary>
    /// A quadrant that starts under the middle, mirrored, each node counted once: the middle 1, axes 2, the rest 4. A mean of nodes, not of area.
    /// </summary>
    /// <param name="columns">Readings in a row. [count, at least 1]</param>
    /// <param name="rows">Rows. [count, at least 1]</param>
    /// <exception cref="ArgumentOutOfRangeException">A negative count.</exception>
    public static IReadOnlyList<double> OfMirroredNodes(int columns, int rows) =>
        [.. Enumerable.Range(0, Require.Count(rows)).SelectMany(row => Enumerable.Range(0, Require.Count(columns)).Select(column => Sides(row) * Sides(column)))];

    /// <summary>
    /// Readings along one or more lines outwards: rings bounded midway between the radii, the last one ending at the last radius. Readings at the
    /// same radius share their ring.
    /// </summary>
    /// <param name="radii">Distance of each reading from the middle, in any order. [m, 0 or more, not all 0]</param>
    /// <exception cref="ArgumentException">No readings, or all in the middle.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A negative distance.</exception>
    public static IReadOnlyList<double> OfRings(IReadOnlyList<double> radii)
    {
        double[] rings = [.. radii.Select(radius => Require.NotNegative(radius)).Distinct().Order()];
        if (rings.Length == 0 || rings[^1] == 0) throw new ArgumentException("Must hold a reading away from the middle.", nameof(radii));
        var areas = new Dictionary<double, double>();
        for (int i = 0; i < rings.Length; i++)
        {
            var inner = i == 0 ? 0 : (rings[i - 1] + rings[i]) / 2;
            var outer = i == rings.Length - 1 ? rings[i] : (rings[i] + rings[i + 1]) / 2;
            areas[rings[i]] = outer * outer - inner * inner;
        }
        var sharers = radii.CountBy(radius => radius).ToDictionary();
        return [.. radii.Select(radius => areas[radius] / sharers[radius])];
    }

    private static double[] Halves(IReadOnlyList<double> places, string name)
    {
        if (places.Count < 2 || places.Zip(places.Skip(1)).Any(pair => !(pair.First < pair.Second)))
            throw new ArgumentException("Must hold two or more places, rising.", name);
        return [.. places.Select((_, i) => (places[Math.Min(i + 1, places.Count - 1)] - places[Math.Max(i - 1, 0)]) / 2)];
    }

    private static double Sides(int step) => step == 0 ? 1 : 2;
}
