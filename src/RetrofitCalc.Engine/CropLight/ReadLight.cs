using NodaTime;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>Mean illuminance of one set of readings.</summary>
/// <param name="Mean">Over the area read. [lx]</param>
/// <param name="Count">Readings. [count]</param>
/// <param name="Height">Lamps over the sensor. [m]</param>
/// <param name="Step">Lit step while reading; null for all lamps.</param>
/// <param name="Day">Day of the readings; null when not noted.</param>
internal readonly record struct ReadLight(Illuminance Mean, int Count, Length Height, string? Step, LocalDate? Day)
{
    /// <summary>The set read nearest to the plane people work on; the first where that is not known; null without one in lux or made lux of.</summary>
    public static ReadLight? Of(AreaLight light, Length? lampsAbove) => light.Readings
        .OrderBy(set => lampsAbove is { } height ? Math.Abs(set.Height.Metres - height.Metres) : 0)
        .Select(set => Of(set, light)).FirstOrDefault(read => read is not null);

    /// <summary>Lux need no conversion to stay lux: the values are averaged as they are.</summary>
    private static ReadLight? Of(ReadingSet set, AreaLight light)
    {
        if (LuxPerUnit(set) is not { } lux || MeasuredLight.Of(set with { Unit = LightUnit.Micromoles }, light) is not { } read) return null;
        return new(Illuminance.FromLux(read.Statistics.Mean.MicromolesPerSquareMetre * lux), read.Readings.Count, set.Height, set.LitStep, set.Date);
    }

    private static double? LuxPerUnit(ReadingSet set) => set.Unit switch
    {
        LightUnit.Lux => 1,
        LightUnit.FootCandles => UnitConversions.LuxPerFootCandle,
        _ => set.Conversion?.LuxPerMicromole,
    };
}
