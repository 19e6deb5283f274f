namespace RetrofitCalc.Engine.Quantities;

/// <summary>Price of electrical energy.</summary>
/// <remarks>Stored per kilowatt-hour. Negative for a credit.</remarks>
public readonly record struct EnergyPrice : IComparable<EnergyPrice>
{
    private readonly double _perKilowattHour;

    private EnergyPrice(double value) => _perKilowattHour = value;

    /// <summary>Zero, also the default.</summary>
    public static EnergyPrice Zero => default;

    /// <summary>Makes the quantity from currency units a kilowatt-hour.</summary>
    /// <param name="value">The number of currency units a kilowatt-hour. [currency/kWh]</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static EnergyPrice FromPerKilowattHour(double value) => new(Require.Finite(value));

    /// <summary>The quantity in currency units a kilowatt-hour. [currency/kWh]</summary>
    public double PerKilowattHour => _perKilowattHour;

    /// <summary>Sum of two.</summary>
    public static EnergyPrice operator +(EnergyPrice left, EnergyPrice right) => new(left._perKilowattHour + right._perKilowattHour);

    /// <summary>Scaled by a plain number.</summary>
    public static EnergyPrice operator *(EnergyPrice left, double factor) => new(left._perKilowattHour * factor);

    /// <summary>Divided by a plain number.</summary>
    public static EnergyPrice operator /(EnergyPrice left, double divisor) => new(left._perKilowattHour / divisor);

    /// <inheritdoc/>
    public int CompareTo(EnergyPrice other) => _perKilowattHour.CompareTo(other._perKilowattHour);

    /// <summary>Whether the left is less.</summary>
    public static bool operator <(EnergyPrice left, EnergyPrice right) => left._perKilowattHour < right._perKilowattHour;

    /// <summary>Whether the left is more.</summary>
    public static bool operator >(EnergyPrice left, EnergyPrice right) => left._perKilowattHour > right._perKilowattHour;

    /// <summary>Whether the left is less or the same.</summary>
    public static bool operator <=(EnergyPrice left, EnergyPrice right) => left._perKilowattHour <= right._perKilowattHour;

    /// <summary>Whether the left is more or the same.</summary>
    public static bool operator >=(EnergyPrice left, EnergyPrice right) => left._perKilowattHour >= right._perKilowattHour;
}
