using RetrofitCalc.Engine.Checks;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>Whether a steady light gives a crop the least it wants, in hours it bears (E-70). The most wanted is not looked at.</summary>
/// <param name="Met">True when it does in the hours lit.</param>
/// <param name="Hours">Fewest hours of a day that would do; null when none does. [h]</param>
/// <param name="Problem">What stands in the way, in plain words; null when the target is met.</param>
public sealed record TargetReach(bool Met, OperatingTime? Hours, string? Problem)
{
    private const double Rounding = 1e-9; // hours that differ by less are the same

    private static readonly OperatingTime Day = OperatingTime.FromHours(24);

    /// <summary>True when no number of hours does: a day is too short, the crop does not bear them, or the light itself is too weak.</summary>
    public bool Unreachable => Hours is null;

    /// <summary>Sets a light against a target.</summary>
    /// <param name="target">What the crop wants.</param>
    /// <param name="light">While lit. [µmol m⁻² s⁻¹]</param>
    /// <param name="photoperiod">Hours lit each day. [h, 0–24]</param>
    /// <exception cref="ArgumentOutOfRangeException">The crop is said to bear more than 24 h.</exception>
    public static TargetReach Of(LightTarget target, PhotonFluxDensity light, OperatingTime photoperiod)
    {
        if (target.LeastLight > light) return new(false, null, "The light is too weak; more hours do not help.");
        if (Fewest(target, light) is not { } fewest) return new(false, null, TooLong(target.LeastDaily!.Value, light, target.MostHours));
        if (photoperiod.Hours < fewest.Hours - Rounding) return new(false, fewest, $"It needs {Text(fewest)} h a day.");
        return photoperiod > target.MostHours ? new(false, fewest, $"It bears {Text(target.MostHours!.Value)} h a day.") : new(true, fewest, null);
    }

    /// <summary>Hours that give the daily light, and not fewer than the crop wants; null when it does not bear them.</summary>
    private static OperatingTime? Fewest(LightTarget target, PhotonFluxDensity light)
    {
        var hours = target.LeastDaily is { } least ? least.HoursUnder(light, target.MostHours ?? Day) : OperatingTime.Zero;
        return hours < target.FewestHours ? target.FewestHours : hours;
    }

    private static string TooLong(DailyLight least, PhotonFluxDensity light, OperatingTime? borne) =>
        least.HoursUnder(light, Day) is { } hours && borne is { } most
            ? $"It would need {Text(hours)} h a day, and the crop bears {Text(most)} h."
            : "A day of 24 h is too short for it.";

    /// <summary>Rounded up to a tenth, so that the hours told are enough.</summary>
    private static string Text(OperatingTime time) => Problems.Text(Math.Ceiling(time.Hours * 10 - Rounding) / 10);
}
