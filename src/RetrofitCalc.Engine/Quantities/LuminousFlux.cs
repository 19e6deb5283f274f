namespace RetrofitCalc.Engine.Quantities;

/// <summary>Light as the eye weighs it.</summary>
/// <remarks>Stored in lumens. Zero or more.</remarks>
public readonly record struct LuminousFlux : IComparable<LuminousFlux>
{
    private readonly double _lumens;

    private LuminousFlux(double value) => _lumens = value;

    /// <summary>Zero, also the default.</summary>
    public static LuminousFlux Zero => default;

    /// <summary>Makes the quantity from lumens.</summary>
    /// <param name="value">The number of lumens. [lm]</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number, or negative.</exception>
    public static LuminousFlux FromLumens(double value) => new(Require.NotNegative(value));

    /// <summary>The quantity in lumens. [lm]</summary>
    public double Lumens => _lumens;

    /// <summary>Sum of two.</summary>
    public static LuminousFlux operator +(LuminousFlux left, LuminousFlux right) => new(left._lumens + right._lumens);

    /// <summary>Scaled by a plain number.</summary>
    public static LuminousFlux operator *(LuminousFlux left, double factor) => new(left._lumens * factor);

    /// <summary>Divided by a plain number.</summary>
    public static LuminousFlux operator /(LuminousFlux left, double divisor) => new(left._lumens / divisor);

    /// <summary>Ratio of two. [unitless]</summary>
    public static double operator /(LuminousFlux left, LuminousFlux right) => left._lumens / right._lumens;

    /// <inheritdoc/>
    public int CompareTo(LuminousFlux other) => _lumens.CompareTo(other._lumens);

    /// <summary>Whether the left is less.</summary>
    public static bool operator <(LuminousFlux left, LuminousFlux right) => left._lumens < right._lumens;

    /// <summary>Whether the left is more.</summary>
    public static bool operator >(LuminousFlux left, LuminousFlux right) => left._lumens > right._lumens;

    /// <summary>Whether the left is less or the same.</summary>
    public static bool operator <=(LuminousFlux left, LuminousFlux right) => left._lumens <= right._lumens;

    /// <summary>Whether the left is more or the same.</summary>
    public static bool operator >=(LuminousFlux left, LuminousFlux right) => left._lumens >= right._lumens;
}
