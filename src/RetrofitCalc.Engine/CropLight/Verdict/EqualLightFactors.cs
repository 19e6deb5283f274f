using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>How many luminaires would give the light of now (E-76).</summary>
internal static class EqualLightFactors
{
    private const double Fewest = 0.01, Most = 100;

    /// <summary>
    /// Luminaires for each one of the option in one stage: the light that is missing made up by lines with other products; null when not known.
    /// Renewed lamps are upkeep and stay as many. [unitless]
    /// </summary>
    /// <param name="change">The bench and the option.</param>
    /// <param name="light">Its light in the stage, known.</param>
    /// <param name="stage">The verdict on it.</param>
    public static double? Of(BenchChange change, BenchStage light, StageLight stage)
    {
        var changed = light.MeanOf(line => line.OtherProduct);
        if (changed <= 0 || stage.Now is not { } now)
            return null;
        var wanted = now.Daily.LightOver(stage.Photoperiod).MicromolesPerSquareMetre;
        return Math.Clamp((wanted - light.MeanOf(line => !line.OtherProduct)) / changed, Fewest, Most);
    }
}
