using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearRegression;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>Least squares with shares of zero or more.</summary>
/// <param name="Shares">A share for each column; zero for columns that are not used.</param>
/// <param name="SumOfSquares">What is left.</param>
/// <param name="Used">Columns that are used.</param>
/// <param name="Covariance">Of the used shares; null where there are no more readings than shares.</param>
/// <remarks>
/// The best fit with non-negative shares is the plain best fit of some choice of columns; with so few columns all choices are tried, the
/// smaller first, and a larger one is taken only when it is better.
/// </remarks>
internal sealed record NonNegativeFit(double[] Shares, double SumOfSquares, int[] Used, Matrix<double>? Covariance)
{
    private const double Better = 1 - 1e-9;

    /// <summary>Matrices here are small: several threads would only wait for each other, forty times as long.</summary>
    static NonNegativeFit() => MathNet.Numerics.Control.UseSingleThread();

    /// <summary>Null when no choice of columns fits with shares of zero or more.</summary>
    public static NonNegativeFit? Best(double[][] columns, double[] wanted, IEnumerable<int[]> choices)
    {
        NonNegativeFit? best = null;
        var nothing = 1e-20 * wanted.Sum(value => value * value);
        foreach (var choice in choices.OrderBy(choice => choice.Length))
            if (Of(columns, wanted, choice) is { } fit && (best is null || fit.SumOfSquares + nothing < best.SumOfSquares * Better))
                best = fit;
        return best;
    }

    private static NonNegativeFit? Of(double[][] columns, double[] wanted, int[] choice)
    {
        if (choice.Any(column => columns[column].All(value => value == 0)) || choice.Length > wanted.Length) return null;
        // Columns of one size: a constant in µmol/s and light in µmol m⁻² s⁻¹ differ by orders of magnitude.
        double[] size = [.. choice.Select(column => Math.Sqrt(columns[column].Sum(value => value * value)))];
        var matrix = Matrix<double>.Build.DenseOfColumns(choice.Select((column, at) => columns[column].Select(value => value / size[at])));
        var target = Vector<double>.Build.Dense(wanted);
        var found = MultipleRegression.QR(matrix, target);
        if (found.Any(share => !double.IsFinite(share) || share < 0)) return null;
        var left = (matrix * found - target).DotProduct(matrix * found - target);
        var shares = new double[columns.Length];
        foreach (var (at, column) in choice.Index()) shares[column] = found[at] / size[at];
        var freedom = wanted.Length - choice.Length;
        var covariance = freedom > 0 ? (matrix.TransposeThisAndMultiply(matrix)).Inverse() * (left / freedom) : null;
        covariance?.MapIndexedInplace((row, column, value) => value / (size[row] * size[column]));
        return new(shares, left, choice, covariance);
    }
}
