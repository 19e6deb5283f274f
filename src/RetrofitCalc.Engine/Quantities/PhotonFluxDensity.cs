namespace RetrofitCalc.Engine.Quantities;

/// <summary>Photons a second that fall on an area: PPFD when they are those of 400–700 nm.</summary>
/// <remarks>Stored in micromoles per square metre and second. Zero or more.</remarks>
public readonly record struct PhotonFluxDensity : IComparable<PhotonFluxDensity>
{
    private readonly double _micromoles;

    private PhotonFluxDensity(double value) => _micromoles = value;

    /// <summary>Zero, also the default.</summary>
    public static PhotonFluxDensity Zero => default;

    /// <summary>Makes the quantity from micromoles per square metre and second.</summary>
    /// <param name="value">The number of micromoles per square metre and second. [µmol m⁻² s⁻¹]</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number, or negative.</exception>
    public static PhotonFluxDensity FromMicromolesPerSquareMetre(double value) => new(Require.NotNegative(value));

    /// <summary>The quantity in micromoles per square metre and second. [µmol m⁻² s⁻¹]</summary>
    public double MicromolesPerSquareMetre => _micromoles;

    /// <summary>Sum of two.</summary>
    public static PhotonFluxDensity operator +(PhotonFluxDensity left, PhotonFluxDensity right) => new(left._micromoles + right._micromoles);

    /// <summary>Scaled by a plain number.</summary>
    public static PhotonFluxDensity operator *(PhotonFluxDensity left, double factor) => new(left._micromoles * factor);

    /// <summary>Ratio of two. [unitless]</summary>
    public static double operator /(PhotonFluxDensity left, PhotonFluxDensity right) => left._micromoles / right._micromoles;

    /// <inheritdoc/>
    public int CompareTo(PhotonFluxDensity other) => _micromoles.CompareTo(other._micromoles);

    /// <summary>Whether the left is less.</summary>
    public static bool operator <(PhotonFluxDensity left, PhotonFluxDensity right) => left._micromoles < right._micromoles;

    /// <summary>Whether the left is more.</summary>
    public static bool operator >(PhotonFluxDensity left, PhotonFluxDensity right) => left._micromoles > right._micromoles;

    /// <summary>Whether the left is less or the same.</summary>
    public static bool operator <=(PhotonFluxDensity left, PhotonFluxDensity right) => left._micromoles <= right._micromoles;

    /// <summary>Whether the left is more or the same.</summary>
    public static bool operator >=(PhotonFluxDensity left, PhotonFluxDensity right) => left._micromoles >= right._micromoles;
}
