namespace RetrofitCalc.Engine.Quantities;

/// <summary>An amount in the study's currency. May be negative.</summary>
/// <remarks>Stored in currency units (not cents), not rounded: bills round line by line, summaries once.</remarks>
public readonly record struct Money : IComparable<Money>
{
    private readonly double _units;

    private Money(double value) => _units = value;

    /// <summary>Zero, also the default.</summary>
    public static Money Zero => default;

    /// <summary>Makes the quantity from currency units.</summary>
    /// <param name="value">The number of currency units. [currency units]</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static Money FromUnits(double value) => new(Require.Finite(value));

    /// <summary>The quantity in currency units. [currency units]</summary>
    public double Units => _units;

    /// <summary>Sum of two.</summary>
    public static Money operator +(Money left, Money right) => new(left._units + right._units);

    /// <summary>Difference of two; may be negative.</summary>
    public static Money operator -(Money left, Money right) => new(left._units - right._units);

    /// <summary>The opposite.</summary>
    public static Money operator -(Money value) => new(-value._units);

    /// <summary>Scaled by a plain number.</summary>
    public static Money operator *(Money left, double factor) => new(left._units * factor);

    /// <summary>Divided by a plain number.</summary>
    public static Money operator /(Money left, double divisor) => new(left._units / divisor);

    /// <summary>Ratio of two. [unitless]</summary>
    public static double operator /(Money left, Money right) => left._units / right._units;

    /// <inheritdoc/>
    public int CompareTo(Money other) => _units.CompareTo(other._units);

    /// <summary>Whether the left is less.</summary>
    public static bool operator <(Money left, Money right) => left._units < right._units;

    /// <summary>Whether the left is more.</summary>
    public static bool operator >(Money left, Money right) => left._units > right._units;

    /// <summary>Whether the left is less or the same.</summary>
    public static bool operator <=(Money left, Money right) => left._units <= right._units;

    /// <summary>Whether the left is more or the same.</summary>
    public static bool operator >=(Money left, Money right) => left._units >= right._units;
}
