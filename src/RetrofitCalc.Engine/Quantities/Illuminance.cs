namespace RetrofitCalc.Engine.Quantities;

/// <summary>Light on an area as the eye weighs it.</summary>
/// <remarks>Stored in lux. Zero or more.</remarks>
public readonly record struct Illuminance : IComparable<Illuminance>
{
    private readonly double _lux;

    private Illuminance(double value) => _lux = value;

    /// <summary>Zero, also the default.</summary>
    public static Illuminance Zero => default;

    /// <summary>Makes the quantity from lux.</summary>
    /// <param name="value">The number of lux. [lx]</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number, or negative.</exception>
    public static Illuminance FromLux(double value) => new(Require.NotNegative(value));

    /// <summary>The quantity in lux. [lx]</summary>
    public double Lux => _lux;

    /// <summary>Makes the quantity from foot-candles.</summary>
    /// <param name="value">The number of foot-candles. [fc]</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number, or negative.</exception>
    public static Illuminance FromFootCandles(double value) => new(Require.NotNegative(value) * UnitConversions.LuxPerFootCandle);

    /// <summary>The quantity in foot-candles. [fc]</summary>
    public double FootCandles => _lux / UnitConversions.LuxPerFootCandle;

    /// <summary>Sum of two.</summary>
    public static Illuminance operator +(Illuminance left, Illuminance right) => new(left._lux + right._lux);

    /// <summary>Scaled by a plain number.</summary>
    public static Illuminance operator *(Illuminance left, double factor) => new(left._lux * factor);

    /// <summary>Ratio of two. [unitless]</summary>
    public static double operator /(Illuminance left, Illuminance right) => left._lux / right._lux;

    /// <inheritdoc/>
    public int CompareTo(Illuminance other) => _lux.CompareTo(other._lux);

    /// <summary>Whether the left is less.</summary>
    public static bool operator <(Illuminance left, Illuminance right) => left._lux < right._lux;

    /// <summary>Whether the left is more.</summary>
    public static bool operator >(Illuminance left, Illuminance right) => left._lux > right._lux;

    /// <summary>Whether the left is less or the same.</summary>
    public static bool operator <=(Illuminance left, Illuminance right) => left._lux <= right._lux;

    /// <summary>Whether the left is more or the same.</summary>
    public static bool operator >=(Illuminance left, Illuminance right) => left._lux >= right._lux;
}
