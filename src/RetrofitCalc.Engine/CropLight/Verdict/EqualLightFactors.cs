using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>How many luminaires would give at least the light of now, both lights at the end of their intervals (E-76).</summary>
internal static class EqualLightFactors
{
    /// <summary>More cannot hang over a bench for each one of the option: common practice, no source. [unitless]</summary>
    private const double Most = 100;

    private const double Same = 1e-9;

    /// <summary>
    /// Luminaires for each one of the option in one stage, 1 or more: the light that is missing made up by lines with other products. Renewed lamps
    /// are upkeep and stay as many; light gained is no saving. Null when not known, or when no number of luminaires makes it up. [unitless]
    /// </summary>
    /// <param name="change">The bench and the option.</param>
    /// <param name="light">Its light in the stage, known.</param>
    /// <param name="stage">The verdict on it.</param>
    public static double? Of(BenchChange change, BenchStage light, StageLight stage)
    {
        if (light.NowAtEnd is not { } now)
            return null;
        var wanted = light.Mean(now) * LightWanted.Photoperiod(light.NowStage).Hours / stage.Photoperiod.Hours;
        var (changed, kept) = (light.MeanOf(line => line.OtherProduct, change.EndYears), light.MeanOf(line => !line.OtherProduct, change.EndYears));
        var factor = (wanted - kept) / changed;
        return wanted <= (changed + kept) * (1 + Same) ? 1 : changed > 0 && factor <= Most ? factor : null;
    }
}
