using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>What is left of the rated light: wear of the lamps, dirt, and air at the lamps (E-69).</summary>
/// <param name="Lamp">Share left as lamps burn. [unitless, 0–1]</param>
/// <param name="Dirt">Share left under dirt. [unitless, 0–1]</param>
/// <param name="Temperature">Share at the temperature of the air. [unitless, 0–1]</param>
public sealed record LightLoss(double Lamp, double Dirt, double Temperature)
{
    /// <summary>Light loss factor: the product. [unitless, 0–1]</summary>
    public double Factor => Lamp * Dirt * Temperature;

    /// <summary>What to know about it: how wear was taken, and what was not known of the air.</summary>
    public IReadOnlyList<string> Remarks { get; init; } = [];

    /// <summary>Light loss of what is fitted on a line.</summary>
    /// <param name="line">The line with what is fitted; its area gives dirt and air.</param>
    /// <param name="burned">Hours the lamps have burned since new. [h]</param>
    /// <param name="yearsSinceCleaning">Time since the last cleaning. [years]</param>
    /// <remarks>Where nobody has looked at the area's light, the usual dirt is taken; where nobody has measured the air, rated light.</remarks>
    public static LightLoss Of(FittedLine line, OperatingTime burned, double yearsSinceCleaning)
    {
        var area = line.Area.Light ?? new AreaLight();
        var maintenance = LumenMaintenance.Of(line);
        var family = line.Fitting is BallastedFitting lamps ? lamps.Lamp.Family : "LED";
        return new(maintenance.At(burned), DirtDepreciation.At(area, yearsSinceCleaning), area.AirAtLamps is { } air ? LampTemperature.Output(family, air) : 1)
        {
            Remarks = [maintenance.Basis, .. Air(area, family)],
        };
    }

    private static IEnumerable<string> Air(AreaLight area, string family)
    {
        if (family == "LED") yield return LampTemperature.LedRemark;
        else if (area.AirAtLamps is null) yield return "Air at the lamps is not measured: light is counted as at the temperature of the rating.";
    }
}
