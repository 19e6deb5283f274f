namespace RetrofitCalc.Engine.Quantities;

/// <summary>Photons a second between 400 and 700 nm.</summary>
/// <remarks>Stored in micromoles a second. Zero or more.</remarks>
public readonly record struct PhotonFlux : IComparable<PhotonFlux>
{
    private readonly double _micromoles;

    private PhotonFlux(double value) => _micromoles = value;

    /// <summary>Zero, also the default.</summary>
    public static PhotonFlux Zero => default;

    /// <summary>Makes the quantity from micromoles a second.</summary>
    /// <param name="value">The number of micromoles a second. [µmol/s]</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number, or negative.</exception>
    public static PhotonFlux FromMicromolesPerSecond(double value) => new(Require.NotNegative(value));

    /// <summary>The quantity in micromoles a second. [µmol/s]</summary>
    public double MicromolesPerSecond => _micromoles;

    /// <summary>Sum of two.</summary>
    public static PhotonFlux operator +(PhotonFlux left, PhotonFlux right) => new(left._micromoles + right._micromoles);

    /// <summary>Scaled by a plain number.</summary>
    public static PhotonFlux operator *(PhotonFlux left, double factor) => new(left._micromoles * factor);

    /// <summary>Divided by a plain number.</summary>
    public static PhotonFlux operator /(PhotonFlux left, double divisor) => new(left._micromoles / divisor);

    /// <summary>Ratio of two. [unitless]</summary>
    public static double operator /(PhotonFlux left, PhotonFlux right) => left._micromoles / right._micromoles;

    /// <inheritdoc/>
    public int CompareTo(PhotonFlux other) => _micromoles.CompareTo(other._micromoles);

    /// <summary>Whether the left is less.</summary>
    public static bool operator <(PhotonFlux left, PhotonFlux right) => left._micromoles < right._micromoles;

    /// <summary>Whether the left is more.</summary>
    public static bool operator >(PhotonFlux left, PhotonFlux right) => left._micromoles > right._micromoles;

    /// <summary>Whether the left is less or the same.</summary>
    public static bool operator <=(PhotonFlux left, PhotonFlux right) => left._micromoles <= right._micromoles;

    /// <summary>Whether the left is more or the same.</summary>
    public static bool operator >=(PhotonFlux left, PhotonFlux right) => left._micromoles >= right._micromoles;
}
