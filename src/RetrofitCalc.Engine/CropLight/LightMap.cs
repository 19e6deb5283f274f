using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>Light on an even grid over a bench, for pictures and tables.</summary>
/// <param name="X">Columns, rising, from the middle of the bench along it. [m]</param>
/// <param name="Y">Rows, rising, from the middle across it. [m]</param>
/// <param name="Light">A value for each row and column. [µmol m⁻² s⁻¹]</param>
public sealed record LightMap(IReadOnlyList<double> X, IReadOnlyList<double> Y, double[,] Light)
{
    private const int LongerSide = 48, FewestCells = 8;

    /// <summary>Middles of alike cells over the whole bench, row by row; null where the size of the bench is not known.</summary>
    /// <param name="light">The bench.</param>
    /// <remarks>48 cells along the longer side, at least 8 along the other: all stand for the same area.</remarks>
    public static IReadOnlyList<PlanePoint>? GridOver(AreaLight light)
    {
        if (light is not { BenchLength: { Metres: > 0 } length, BenchWidth: { Metres: > 0 } width }) return null;
        var longer = length > width ? length : width;
        var x = Middles(length, Cells(length / longer));
        return [.. Middles(width, Cells(width / longer)).SelectMany(row => x.Select(column => new PlanePoint(column, row)))];
    }

    /// <summary>Lays light at the points of a grid out in rows and columns.</summary>
    /// <param name="grid">Points row by row, as <see cref="GridOver"/> gives them.</param>
    /// <param name="light">A value for each. [µmol m⁻² s⁻¹]</param>
    /// <exception cref="ArgumentException">No points, other numbers of values, or points that are no grid.</exception>
    public static LightMap Of(IReadOnlyList<PlanePoint> grid, IReadOnlyList<PhotonFluxDensity> light)
    {
        double[] y = [.. grid.Select(point => point.Y).Distinct()], x = [.. grid.Select(point => point.X).Distinct()];
        if (grid.Count == 0 || light.Count != grid.Count || x.Length * y.Length != grid.Count)
            throw new ArgumentException($"Must be a value for each of {y.Length} rows and {x.Length} columns: {light.Count}.", nameof(light));
        var values = new double[y.Length, x.Length];
        foreach (var (at, value) in light.Index()) values[at / x.Length, at % x.Length] = value.MicromolesPerSquareMetre;
        return new(x, y, values);
    }

    private static int Cells(double share) => Math.Max(FewestCells, (int)Math.Round(LongerSide * share));

    private static double[] Middles(Length side, int cells) =>
        [.. Enumerable.Range(0, cells).Select(cell => side.Metres * ((cell + 0.5) / cells - 0.5))];
}
