using RetrofitCalc.Engine.CropLight;

namespace RetrofitCalc.Reports;

/// <summary>Lines of equal light through values on a grid, and the patches that have a light or more. Values between the grid's points lie on straight lines.</summary>
/// <remarks>Cell by cell; where two high corners face two low ones, the mean of the four says which are joined.</remarks>
public static class ContourLines
{
    /// <summary>Lines of one level. A line that closes ends where it began; others end at the edge of the grid.</summary>
    /// <param name="x">Columns, rising.</param>
    /// <param name="y">Rows, rising.</param>
    /// <param name="values">A value for each row and column, in this order.</param>
    /// <param name="level">The level. A point of just this level counts as above it.</param>
    /// <exception cref="ArgumentException">Fewer than two columns or rows, or as many values as do not fit them.</exception>
    public static IReadOnlyList<IReadOnlyList<PlanePoint>> Of(IReadOnlyList<double> x, IReadOnlyList<double> y, double[,] values, double level)
    {
        if (x.Count < 2 || y.Count < 2 || values.GetLength(0) != y.Count || values.GetLength(1) != x.Count)
            throw new ArgumentException($"{values.GetLength(0)} by {values.GetLength(1)} values do not fit {y.Count} rows and {x.Count} columns.", nameof(values));
        return new ContourTrace(x, y, values, level).Lines();
    }

    /// <summary>Closed outlines of all that has the level or more, edges of the grid included. Filled by the even-odd rule, holes stay open.</summary>
    /// <param name="x">Columns, rising.</param>
    /// <param name="y">Rows, rising.</param>
    /// <param name="values">A value for each row and column, in this order.</param>
    /// <param name="level">The level.</param>
    /// <remarks>Paint the lowest level first and each higher one over it: no seams then show between the tints.</remarks>
    /// <exception cref="ArgumentException">As for <see cref="Of"/>.</exception>
    public static IReadOnlyList<IReadOnlyList<PlanePoint>> AtOrAbove(IReadOnlyList<double> x, IReadOnlyList<double> y, double[,] values, double level)
    {
        // A ring of dark points right on the edge closes every outline there.
        var ringed = new double[y.Count + 2, x.Count + 2];
        for (var row = 0; row < y.Count + 2; row++)
            for (var column = 0; column < x.Count + 2; column++)
                ringed[row, column] = row == 0 || column == 0 || row > y.Count || column > x.Count ? level - 1 : values[row - 1, column - 1];
        return Of([x[0], .. x, x[^1]], [y[0], .. y, y[^1]], ringed, level);
    }
}
