using RetrofitCalc.Engine.CropLight;

namespace RetrofitCalc.Reports;

/// <summary>How the model of the lamps meets the readings.</summary>
internal static class LightFit
{
    public static IEnumerable<string> Of(StageMaps maps, QuantityText text)
    {
        if (maps.Fit is not { } fit) yield break;
        var largest = maps.Readings.MaxBy(reading => Math.Abs(reading.Residual));
        yield return $"The model meets {maps.Readings.Count} readings within {text.Percent(fit.RootMeanSquare, 1)} (root of the mean square)"
            + (largest is null ? "." : $"; the farthest is {text.Change(largest.Residual)} where {text.Light(largest.Reading.Light)} was read with the lamps {text.Length(largest.Height)} above. {fit.Determined}");
        yield return $"It holds for lamps from half of {text.Length(fit.Heights.Low)} to one and a half of {text.Length(fit.Heights.High)} over the crop, and is not used beyond.";
    }
}
