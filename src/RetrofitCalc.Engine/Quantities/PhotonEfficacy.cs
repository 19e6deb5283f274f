namespace RetrofitCalc.Engine.Quantities;

/// <summary>Photons of 400–700 nm made of a joule of electricity.</summary>
/// <remarks>Stored in micromoles a joule. Zero or more.</remarks>
public readonly record struct PhotonEfficacy : IComparable<PhotonEfficacy>
{
    private readonly double _micromoles;

    private PhotonEfficacy(double value) => _micromoles = value;

    /// <summary>Zero, also the default.</summary>
    public static PhotonEfficacy Zero => default;

    /// <summary>Makes the quantity from micromoles a joule.</summary>
    /// <param name="value">The number of micromoles a joule. [µmol/J]</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number, or negative.</exception>
    public static PhotonEfficacy FromMicromolesPerJoule(double value) => new(Require.NotNegative(value));

    /// <summary>The quantity in micromoles a joule. [µmol/J]</summary>
    public double MicromolesPerJoule => _micromoles;

    /// <summary>Photons a second over the electrical power drawn for them: Kp = PPF / P (E-44, S-50).</summary>
    /// <param name="photons">Photons of 400–700 nm that leave the luminaire. [µmol/s]</param>
    /// <param name="input">Power drawn from the supply, driver or ballast included; more than zero. [W]</param>
    /// <exception cref="ArgumentOutOfRangeException">The power is zero or less.</exception>
    public static PhotonEfficacy Of(PhotonFlux photons, Power input) =>
        new(photons.MicromolesPerSecond / Require.InRange(input.Watts, double.Epsilon, double.MaxValue));

    /// <summary>Electricity a mole of photons costs: 1 / (3.6 · Kp) (E-44). [kWh/mol]</summary>
    /// <exception cref="InvalidOperationException">No photons at all: no amount of energy makes a mole.</exception>
    public Energy EnergyPerMole =>
        _micromoles > 0
            ? Energy.FromKilowattHours(1e6 / (_micromoles * UnitConversions.SecondsPerHour * UnitConversions.WattsPerKilowatt))
            : throw new InvalidOperationException("A lamp without photons makes no mole of them.");

    /// <inheritdoc/>
    public int CompareTo(PhotonEfficacy other) => _micromoles.CompareTo(other._micromoles);

    /// <summary>Whether the left is less.</summary>
    public static bool operator <(PhotonEfficacy left, PhotonEfficacy right) => left._micromoles < right._micromoles;

    /// <summary>Whether the left is more.</summary>
    public static bool operator >(PhotonEfficacy left, PhotonEfficacy right) => left._micromoles > right._micromoles;

    /// <summary>Whether the left is less or the same.</summary>
    public static bool operator <=(PhotonEfficacy left, PhotonEfficacy right) => left._micromoles <= right._micromoles;

    /// <summary>Whether the left is more or the same.</summary>
    public static bool operator >=(PhotonEfficacy left, PhotonEfficacy right) => left._micromoles >= right._micromoles;
}
