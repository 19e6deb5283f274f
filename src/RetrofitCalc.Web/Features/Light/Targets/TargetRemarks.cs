using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Reports;

namespace RetrofitCalc.Web.Features.Light.Targets;

/// <summary>What a target means in the hours of its stage, and what stands in its way.</summary>
/// <param name="Needs">The steady light it needs in these hours; empty without a light of the day.</param>
/// <param name="Hours">What is wrong about hours and day length.</param>
/// <param name="Reach">Why it cannot be met, or not in these hours; null when it is met or nothing is known.</param>
public sealed record TargetRemarks(string Needs, IReadOnlyList<string> Hours, string? Reach)
{
    /// <param name="light">The stage's verdict, with the light now and after; null when not evaluated.</param>
    public static TargetRemarks Of(Study study, (Area Area, Season Season, Stage Stage) at, StageLight? light, QuantityText text)
    {
        var target = at.Stage.Target!;
        var photoperiod = Photoperiod(at.Stage);
        return new(Light(target, photoperiod, text), DayLengthWarnings.Of(study, at.Area, at.Season, at.Stage), Unreachable(target, text) ?? Against(target, light, photoperiod, text));
    }

    public static OperatingTime Photoperiod(Stage stage)
    {
        var hours = (stage.LightsOff - stage.LightsOn).ToDuration().TotalHours;
        return OperatingTime.FromHours(hours > 0 ? hours : hours + 24);
    }

    private static string Light(LightTarget target, OperatingTime photoperiod, QuantityText text)
    {
        string Over(DailyLight daily) => text.Number(daily.LightOver(photoperiod).MicromolesPerSquareMetre);
        var hours = $"In the {text.Count(photoperiod.Hours)} h lit";
        return (target.LeastDaily, target.MostDaily) switch
        {
            ({ } least, { } most) => $"{hours} this is a steady {Over(least)} to {Over(most)} µmol/m²·s.",
            ({ } least, null) => $"{hours} this needs a steady {Over(least)} µmol/m²·s.",
            (null, { } most) => $"{hours} this is a steady {Over(most)} µmol/m²·s at most.",
            _ => "",
        };
    }

    /// <summary>A light of the day that the strongest light borne does not give in the most hours borne, whatever hangs there.</summary>
    private static string? Unreachable(LightTarget target, QuantityText text)
    {
        if (target is not { LeastDaily: { } least, MostLight: { } most }) return null;
        var hours = target.MostHours ?? OperatingTime.FromHours(24);
        var best = DailyLight.Of(most, hours);
        return best.CompareTo(least) < 0
            ? $"Unreachable: {text.Number(most.MicromolesPerSquareMetre)} µmol/m²·s, the most it bears, in {text.Count(hours.Hours)} h give {text.Number(best.MolesPerSquareMetre, 1)} mol/m² a day, less than the least wanted."
            : null;
    }

    private static string? Against(LightTarget target, StageLight? stage, OperatingTime photoperiod, QuantityText text)
    {
        if (stage is null || (stage.After ?? stage.Now) is not { } figures) return null;
        var reach = TargetReach.Of(target, figures.Mean, photoperiod);
        var light = $"{text.Number(figures.Mean.MicromolesPerSquareMetre)} µmol/m²·s {(stage.After is null ? "now" : "after the change")}";
        return reach.Problem is { } problem ? $"{(reach.Unreachable ? "Unreachable" : "Not met")} with the {light}: {problem}" : null;
    }
}
