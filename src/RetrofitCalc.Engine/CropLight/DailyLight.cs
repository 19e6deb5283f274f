using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>Daily light integral: photons of a day on an area.</summary>
/// <remarks>Stored in moles per square metre and day. Zero or more. DLI = PPFD · h · 0.0036 (E-53; Purdue Extension HO-238-W).</remarks>
public readonly record struct DailyLight : IComparable<DailyLight>
{
    private const double MolesOfMicromoleHours = 0.0036;

    private DailyLight(double moles) => MolesPerSquareMetre = moles;

    /// <summary>Photons of a day. [mol m⁻² d⁻¹]</summary>
    public double MolesPerSquareMetre { get; }

    /// <summary>Makes the quantity from moles per square metre and day.</summary>
    /// <param name="value">The number of moles. [mol m⁻² d⁻¹]</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number, or negative.</exception>
    public static DailyLight FromMolesPerSquareMetre(double value) => new(Require.NotNegative(value));

    /// <summary>What a steady light gives in a day.</summary>
    /// <param name="light">While lit. [µmol m⁻² s⁻¹]</param>
    /// <param name="photoperiod">Hours lit each day. [h, 0–24]</param>
    /// <exception cref="ArgumentOutOfRangeException">More than 24 h.</exception>
    public static DailyLight Of(PhotonFluxDensity light, OperatingTime photoperiod) =>
        new(light.MicromolesPerSquareMetre * Require.InRange(photoperiod.Hours, 0, 24, nameof(photoperiod)) * MolesOfMicromoleHours);

    /// <summary>The steady light that gives this in the hours of a photoperiod. [µmol m⁻² s⁻¹]</summary>
    /// <param name="photoperiod">Hours lit each day. [h, above 0 to 24]</param>
    /// <exception cref="ArgumentOutOfRangeException">No hours, or more than 24.</exception>
    public PhotonFluxDensity LightOver(OperatingTime photoperiod) =>
        PhotonFluxDensity.FromMicromolesPerSquareMetre(
            MolesPerSquareMetre / (Require.InRange(photoperiod.Hours, double.Epsilon, 24, nameof(photoperiod)) * MolesOfMicromoleHours));

    /// <summary>Hours a day that a steady light needs to give this; null when a day is too short, or the crop does not bear them. [h]</summary>
    /// <param name="light">While lit. [µmol m⁻² s⁻¹]</param>
    /// <param name="most">Hours the crop bears. [h, 0–24]</param>
    /// <exception cref="ArgumentOutOfRangeException">More than 24 h.</exception>
    public OperatingTime? HoursUnder(PhotonFluxDensity light, OperatingTime most)
    {
        Require.InRange(most.Hours, 0, 24, nameof(most));
        if (MolesPerSquareMetre == 0) return OperatingTime.Zero;
        var hours = MolesPerSquareMetre / (light.MicromolesPerSquareMetre * MolesOfMicromoleHours);
        return hours <= most.Hours ? OperatingTime.FromHours(hours) : null;
    }

    /// <inheritdoc/>
    public int CompareTo(DailyLight other) => MolesPerSquareMetre.CompareTo(other.MolesPerSquareMetre);
}
