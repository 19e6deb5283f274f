using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>How close readings should lie.</summary>
/// <param name="AlongLength">Cells along the length. [count, at least 1]</param>
/// <param name="AlongWidth">Cells along the width. [count, at least 1]</param>
/// <remarks>p = 0.2 · 5^log₁₀ d of EN 12464-1 and EN 12193, at most 10 m (E-54).</remarks>
public sealed record GridSpacing(int AlongLength, int AlongWidth)
{
    private const double WidestMetres = 10;

    /// <summary>Largest distance of readings for a measure of the area. [m]</summary>
    /// <param name="measure">The side that rules. [m, above 0]</param>
    /// <exception cref="ArgumentOutOfRangeException">A side of zero.</exception>
    public static Length Largest(Length measure) =>
        Length.FromMetres(Math.Min(WidestMetres, 0.2 * Math.Pow(5, Math.Log10(Require.InRange(measure.Metres, double.Epsilon, double.MaxValue, nameof(measure))))));

    /// <summary>Cells for an area: the rule taken for both of its sides, and the finer kept.</summary>
    /// <param name="length">One side. [m, above 0]</param>
    /// <param name="width">The other side. [m, above 0]</param>
    /// <remarks>The standard takes the longer side, and the shorter from a shape of 2:1 on; shelves lie on that edge, so the shorter always counts here.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">A side of zero.</exception>
    public static GridSpacing For(Length length, Length width)
    {
        var largest = Largest(length < width ? length : width);
        return new(Cells(length, largest), Cells(width, largest));
    }

    // A side that is a whole number of steps must not gain a cell by rounding.
    private static int Cells(Length side, Length largest) => Math.Max(1, (int)Math.Ceiling(side / largest - 1e-9));
}
