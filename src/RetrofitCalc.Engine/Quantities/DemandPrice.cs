namespace RetrofitCalc.Engine.Quantities;

/// <summary>Price of billed demand for one month.</summary>
/// <remarks>Stored per kilowatt. Zero or more.</remarks>
public readonly record struct DemandPrice : IComparable<DemandPrice>
{
    private readonly double _perKilowatt;

    private DemandPrice(double value) => _perKilowatt = value;

    /// <summary>Zero, also the default.</summary>
    public static DemandPrice Zero => default;

    /// <summary>Makes the quantity from currency units a kilowatt and month.</summary>
    /// <param name="value">The number of currency units a kilowatt and month. [currency/(kW·month)]</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number, or negative.</exception>
    public static DemandPrice FromPerKilowatt(double value) => new(Require.NotNegative(value));

    /// <summary>The quantity in currency units a kilowatt and month. [currency/(kW·month)]</summary>
    public double PerKilowatt => _perKilowatt;

    /// <summary>Sum of two.</summary>
    public static DemandPrice operator +(DemandPrice left, DemandPrice right) => new(left._perKilowatt + right._perKilowatt);

    /// <summary>Scaled by a plain number.</summary>
    public static DemandPrice operator *(DemandPrice left, double factor) => new(left._perKilowatt * factor);

    /// <summary>Divided by a plain number.</summary>
    public static DemandPrice operator /(DemandPrice left, double divisor) => new(left._perKilowatt / divisor);

    /// <inheritdoc/>
    public int CompareTo(DemandPrice other) => _perKilowatt.CompareTo(other._perKilowatt);

    /// <summary>Whether the left is less.</summary>
    public static bool operator <(DemandPrice left, DemandPrice right) => left._perKilowatt < right._perKilowatt;

    /// <summary>Whether the left is more.</summary>
    public static bool operator >(DemandPrice left, DemandPrice right) => left._perKilowatt > right._perKilowatt;

    /// <summary>Whether the left is less or the same.</summary>
    public static bool operator <=(DemandPrice left, DemandPrice right) => left._perKilowatt <= right._perKilowatt;

    /// <summary>Whether the left is more or the same.</summary>
    public static bool operator >=(DemandPrice left, DemandPrice right) => left._perKilowatt >= right._perKilowatt;
}
