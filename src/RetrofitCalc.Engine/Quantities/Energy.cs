namespace RetrofitCalc.Engine.Quantities;

/// <summary>Electrical energy. Differences may be negative.</summary>
/// <remarks>Stored in kilowatt-hours. Any finite value.</remarks>
public readonly record struct Energy : IComparable<Energy>
{
    private readonly double _kilowattHours;

    private Energy(double value) => _kilowattHours = value;

    /// <summary>Zero, also the default.</summary>
    public static Energy Zero => default;

    /// <summary>Makes the quantity from kilowatt-hours.</summary>
    /// <param name="value">The number of kilowatt-hours. [kWh]</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static Energy FromKilowattHours(double value) => new(Require.Finite(value));

    /// <summary>The quantity in kilowatt-hours. [kWh]</summary>
    public double KilowattHours => _kilowattHours;

    /// <summary>Sum of two.</summary>
    public static Energy operator +(Energy left, Energy right) => new(left._kilowattHours + right._kilowattHours);

    /// <summary>Difference of two; may be negative.</summary>
    public static Energy operator -(Energy left, Energy right) => new(left._kilowattHours - right._kilowattHours);

    /// <summary>The opposite.</summary>
    public static Energy operator -(Energy value) => new(-value._kilowattHours);

    /// <summary>Scaled by a plain number.</summary>
    public static Energy operator *(Energy left, double factor) => new(left._kilowattHours * factor);

    /// <summary>Divided by a plain number.</summary>
    public static Energy operator /(Energy left, double divisor) => new(left._kilowattHours / divisor);

    /// <summary>Ratio of two. [unitless]</summary>
    public static double operator /(Energy left, Energy right) => left._kilowattHours / right._kilowattHours;

    /// <summary>Price of the energy</summary>
    public static Money operator *(Energy left, EnergyPrice right) => Money.FromUnits(left.KilowattHours * right.PerKilowattHour);

    /// <inheritdoc/>
    public int CompareTo(Energy other) => _kilowattHours.CompareTo(other._kilowattHours);

    /// <summary>Whether the left is less.</summary>
    public static bool operator <(Energy left, Energy right) => left._kilowattHours < right._kilowattHours;

    /// <summary>Whether the left is more.</summary>
    public static bool operator >(Energy left, Energy right) => left._kilowattHours > right._kilowattHours;

    /// <summary>Whether the left is less or the same.</summary>
    public static bool operator <=(Energy left, Energy right) => left._kilowattHours <= right._kilowattHours;

    /// <summary>Whether the left is more or the same.</summary>
    public static bool operator >=(Energy left, Energy right) => left._kilowattHours >= right._kilowattHours;
}
