namespace RetrofitCalc.Engine.Quantities;

/// <summary>Electrical or thermal power. Differences may be negative.</summary>
/// <remarks>Stored in watts. Any finite value.</remarks>
public readonly record struct Power : IComparable<Power>
{
    private readonly double _watts;

    private Power(double value) => _watts = value;

    /// <summary>Zero, also the default.</summary>
    public static Power Zero => default;

    /// <summary>Makes the quantity from watts.</summary>
    /// <param name="value">The number of watts. [W]</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static Power FromWatts(double value) => new(Require.Finite(value));

    /// <summary>The quantity in watts. [W]</summary>
    public double Watts => _watts;

    /// <summary>Makes the quantity from kilowatts.</summary>
    /// <param name="value">The number of kilowatts. [kW]</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static Power FromKilowatts(double value) => new(Require.Finite(value) * UnitConversions.WattsPerKilowatt);

    /// <summary>The quantity in kilowatts. [kW]</summary>
    public double Kilowatts => _watts / UnitConversions.WattsPerKilowatt;

    /// <summary>Heat released if all the power ends in the space: q = 3.412142 · P (E-04). [BTU/h]</summary>
    public double BtuPerHour => _watts * UnitConversions.BtuPerHourPerWatt;

    /// <summary>Cooling the heat asks for: BTU/h over 12,000 (E-04). [tons of refrigeration]</summary>
    public double TonsOfCooling => BtuPerHour / UnitConversions.BtuPerHourPerTon;

    /// <summary>Sum of two.</summary>
    public static Power operator +(Power left, Power right) => new(left._watts + right._watts);

    /// <summary>Difference of two; may be negative.</summary>
    public static Power operator -(Power left, Power right) => new(left._watts - right._watts);

    /// <summary>The opposite.</summary>
    public static Power operator -(Power value) => new(-value._watts);

    /// <summary>Scaled by a plain number.</summary>
    public static Power operator *(Power left, double factor) => new(left._watts * factor);

    /// <summary>Divided by a plain number.</summary>
    public static Power operator /(Power left, double divisor) => new(left._watts / divisor);

    /// <summary>Ratio of two. [unitless]</summary>
    public static double operator /(Power left, Power right) => left._watts / right._watts;

    /// <summary>Energy used when the power is drawn for the time.</summary>
    public static Energy operator *(Power left, OperatingTime right) => Energy.FromKilowattHours(left.Kilowatts * right.Hours);

    /// <inheritdoc/>
    public int CompareTo(Power other) => _watts.CompareTo(other._watts);

    /// <summary>Whether the left is less.</summary>
    public static bool operator <(Power left, Power right) => left._watts < right._watts;

    /// <summary>Whether the left is more.</summary>
    public static bool operator >(Power left, Power right) => left._watts > right._watts;

    /// <summary>Whether the left is less or the same.</summary>
    public static bool operator <=(Power left, Power right) => left._watts <= right._watts;

    /// <summary>Whether the left is more or the same.</summary>
    public static bool operator >=(Power left, Power right) => left._watts >= right._watts;
}
