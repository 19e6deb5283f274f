namespace RetrofitCalc.Engine.Quantities;

/// <summary>Wavelength of radiation in air or vacuum; the difference is ignored.</summary>
/// <remarks>Stored in nanometres. Zero or more.</remarks>
public readonly record struct Wavelength : IComparable<Wavelength>
{
    private readonly double _nanometres;

    private Wavelength(double value) => _nanometres = value;

    /// <summary>Zero, also the default.</summary>
    public static Wavelength Zero => default;

    /// <summary>Makes the quantity from nanometres.</summary>
    /// <param name="value">The number of nanometres. [nm]</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number, or negative.</exception>
    public static Wavelength FromNanometres(double value) => new(Require.NotNegative(value));

    /// <summary>The quantity in nanometres. [nm]</summary>
    public double Nanometres => _nanometres;

    /// <summary>Makes the quantity from micrometres.</summary>
    /// <param name="value">The number of micrometres. [µm]</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number, or negative.</exception>
    public static Wavelength FromMicrometres(double value) => new(Require.NotNegative(value) * UnitConversions.NanometresPerMicrometre);

    /// <summary>The quantity in micrometres. [µm]</summary>
    public double Micrometres => _nanometres / UnitConversions.NanometresPerMicrometre;

    /// <inheritdoc/>
    public int CompareTo(Wavelength other) => _nanometres.CompareTo(other._nanometres);

    /// <summary>Whether the left is less.</summary>
    public static bool operator <(Wavelength left, Wavelength right) => left._nanometres < right._nanometres;

    /// <summary>Whether the left is more.</summary>
    public static bool operator >(Wavelength left, Wavelength right) => left._nanometres > right._nanometres;

    /// <summary>Whether the left is less or the same.</summary>
    public static bool operator <=(Wavelength left, Wavelength right) => left._nanometres <= right._nanometres;

    /// <summary>Whether the left is more or the same.</summary>
    public static bool operator >=(Wavelength left, Wavelength right) => left._nanometres >= right._nanometres;
}
