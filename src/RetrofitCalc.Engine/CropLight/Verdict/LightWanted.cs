using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>What a target asks of the light while lit.</summary>
public static class LightWanted
{
    /// <summary>Lit hours of a day in a stage; on and off at the same time means day and night. [h, above 0 to 24]</summary>
    /// <param name="stage">The stage.</param>
    public static OperatingTime Photoperiod(Stage stage)
    {
        var hours = (stage.LightsOff.TickOfDay - stage.LightsOn.TickOfDay) / (double)NodaTime.NodaConstants.TicksPerHour;
        return OperatingTime.FromHours(hours > 0 ? hours : hours + 24);
    }

    /// <summary>The least light while lit that meets every lower bound; null when there is none. [µmol m⁻² s⁻¹]</summary>
    /// <param name="target">The target; null when nobody has said.</param>
    /// <param name="photoperiod">Lit hours of a day. [h, above 0 to 24]</param>
    public static PhotonFluxDensity? Least(LightTarget? target, OperatingTime photoperiod)
    {
        var byDay = target?.LeastDaily?.LightOver(photoperiod);
        var lit = target?.LeastLight;
        return byDay > lit || lit is null ? byDay : lit;
    }

    /// <summary>The most light while lit that no upper bound forbids; null when there is none. [µmol m⁻² s⁻¹]</summary>
    /// <param name="target">The target; null when nobody has said.</param>
    /// <param name="photoperiod">Lit hours of a day. [h, above 0 to 24]</param>
    public static PhotonFluxDensity? Most(LightTarget? target, OperatingTime photoperiod)
    {
        var byDay = target?.MostDaily?.LightOver(photoperiod);
        var lit = target?.MostLight;
        return byDay < lit || lit is null ? byDay : lit;
    }

    /// <summary>Whether a light is more than a target allows, by more than rounding; false where either is not known.</summary>
    /// <param name="target">The target; null when nobody has said.</param>
    /// <param name="light">The light; null when not known.</param>
    /// <param name="photoperiod">Lit hours of a day. [h, above 0 to 24]</param>
    public static bool IsTooMuch(LightTarget? target, Results.LightFigures? light, OperatingTime photoperiod) =>
        light is { } has && Most(target, photoperiod) is { } most && StageJudge.IsBelow(most, has.Mean);
}
