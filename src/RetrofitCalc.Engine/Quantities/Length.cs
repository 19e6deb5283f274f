namespace RetrofitCalc.Engine.Quantities;

/// <summary>A height or a length.</summary>
/// <remarks>Stored in metres. Zero or more.</remarks>
public readonly record struct Length : IComparable<Length>
{
    private readonly double _metres;

    private Length(double value) => _metres = value;

    /// <summary>Zero, also the default.</summary>
    public static Length Zero => default;

    /// <summary>Makes the quantity from metres.</summary>
    /// <param name="value">The number of metres. [m]</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number, or negative.</exception>
    public static Length FromMetres(double value) => new(Require.NotNegative(value));

    /// <summary>The quantity in metres. [m]</summary>
    public double Metres => _metres;

    /// <summary>Makes the quantity from feet.</summary>
    /// <param name="value">The number of feet. [ft]</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number, or negative.</exception>
    public static Length FromFeet(double value) => new(Require.NotNegative(value) * UnitConversions.MetresPerFoot);

    /// <summary>The quantity in feet. [ft]</summary>
    public double Feet => _metres / UnitConversions.MetresPerFoot;

    /// <summary>Sum of two.</summary>
    public static Length operator +(Length left, Length right) => new(left._metres + right._metres);

    /// <summary>Scaled by a plain number.</summary>
    public static Length operator *(Length left, double factor) => new(left._metres * factor);

    /// <summary>Divided by a plain number.</summary>
    public static Length operator /(Length left, double divisor) => new(left._metres / divisor);

    /// <summary>Ratio of two. [unitless]</summary>
    public static double operator /(Length left, Length right) => left._metres / right._metres;

    /// <inheritdoc/>
    public int CompareTo(Length other) => _metres.CompareTo(other._metres);

    /// <summary>Whether the left is less.</summary>
    public static bool operator <(Length left, Length right) => left._metres < right._metres;

    /// <summary>Whether the left is more.</summary>
    public static bool operator >(Length left, Length right) => left._metres > right._metres;

    /// <summary>Whether the left is less or the same.</summary>
    public static bool operator <=(Length left, Length right) => left._metres <= right._metres;

    /// <summary>Whether the left is more or the same.</summary>
    public static bool operator >=(Length left, Length right) => left._metres >= right._metres;
}
