namespace RetrofitCalc.Engine.Quantities;

/// <summary>Hours for which something burns or a worker works.</summary>
/// <remarks>Stored in hours. Zero or more.</remarks>
public readonly record struct OperatingTime : IComparable<OperatingTime>
{
    private readonly double _hours;

    private OperatingTime(double value) => _hours = value;

    /// <summary>Zero, also the default.</summary>
    public static OperatingTime Zero => default;

    /// <summary>Makes the quantity from hours.</summary>
    /// <param name="value">The number of hours. [h]</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number, or negative.</exception>
    public static OperatingTime FromHours(double value) => new(Require.NotNegative(value));

    /// <summary>The quantity in hours. [h]</summary>
    public double Hours => _hours;

    /// <summary>Makes the quantity from minutes.</summary>
    /// <param name="value">The number of minutes. [min]</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number, or negative.</exception>
    public static OperatingTime FromMinutes(double value) => new(Require.NotNegative(value) * (1.0 / 60));

    /// <summary>The quantity in minutes. [min]</summary>
    public double Minutes => _hours / (1.0 / 60);

    /// <summary>Sum of two.</summary>
    public static OperatingTime operator +(OperatingTime left, OperatingTime right) => new(left._hours + right._hours);

    /// <summary>Scaled by a plain number.</summary>
    public static OperatingTime operator *(OperatingTime left, double factor) => new(left._hours * factor);

    /// <summary>Divided by a plain number.</summary>
    public static OperatingTime operator /(OperatingTime left, double divisor) => new(left._hours / divisor);

    /// <summary>Ratio of two. [unitless]</summary>
    public static double operator /(OperatingTime left, OperatingTime right) => left._hours / right._hours;

    /// <inheritdoc/>
    public int CompareTo(OperatingTime other) => _hours.CompareTo(other._hours);

    /// <summary>Whether the left is less.</summary>
    public static bool operator <(OperatingTime left, OperatingTime right) => left._hours < right._hours;

    /// <summary>Whether the left is more.</summary>
    public static bool operator >(OperatingTime left, OperatingTime right) => left._hours > right._hours;

    /// <summary>Whether the left is less or the same.</summary>
    public static bool operator <=(OperatingTime left, OperatingTime right) => left._hours <= right._hours;

    /// <summary>Whether the left is more or the same.</summary>
    public static bool operator >=(OperatingTime left, OperatingTime right) => left._hours >= right._hours;
}
