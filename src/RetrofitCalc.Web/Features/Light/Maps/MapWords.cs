using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Reports;
using RetrofitCalc.Web.Features.Light.Readings;

namespace RetrofitCalc.Web.Features.Light.Maps;

/// <summary>What maps of light show, in words.</summary>
public static class MapWords
{
    public static string Now(LightFigures? light, QuantityText text) => light is null ? "Now, as read" : $"Now: {Mean(light, text)}";

    public static string Proposed(LightFigures? light, string? option, QuantityText text) =>
        light is null ? $"Proposed: {option}" : $"Proposed: {Mean(light, text)}";

    public static string DrawnNow(MapPair pair, double? wanted, LightPlace place, QuantityText text) => string.Concat(
        $"{LightText.LightUnit}; {pair.RestsOn.TrimEnd('.')}.",
        wanted is { } least ? $" Double line: {text.Number(least)}, what {Hours(place, text)} need for the target." : "");

    public static string DrawnProposed(MapPair pair, ReadingText lengths, QuantityText text) => pair.Fit is { } fit
        ? $"Predicted from rated outputs, fitted to the readings at {Heights(fit, lengths)}; they meet within ± {text.Percent(fit.RootMeanSquare)} (root mean square). Same scale, same line."
        : "Same scale, same line.";

    /// <summary>How well the model meets the readings, and how far it may be trusted.</summary>
    public static IEnumerable<string> Model(MapPair? pair, AreaLight light, Study study)
    {
        var (text, lengths) = (QuantityText.For(study), new ReadingText(study, light));
        foreach (var set in light.Readings)
            if (MeasuredLight.Of(set, light) is { } measured)
                yield return $"Readings {lengths.Near(set.Height)} under the lamps: mean {text.Number(measured.Statistics.Mean.MicromolesPerSquareMetre)} {LightText.LightUnit}, ±\u00A0{text.Percent(measured.Uncertainty)} by meter and conversion; {measured.Weighting}.";
        if (pair?.Fit is not { } fit) yield break;
        var worst = fit.Residuals.MaxBy(Math.Abs);
        yield return $"The model meets {fit.Residuals.Count} readings within ±\u00A0{text.Percent(fit.RootMeanSquare)} (root mean square); the worst is {text.Change(worst)} off. {fit.Determined}";
        yield return $"Read at {Heights(fit, lengths)} under the lamps. The model may be used from {lengths.Near(fit.Heights.Low * 0.5)} to {lengths.Near(fit.Heights.High * 1.5)} and says \"not known\" beyond.";
    }

    /// <summary>Least light while lit that a target asks for, by itself or over the lit hours. [µmol m⁻² s⁻¹]</summary>
    public static double? LeastLight(LightTarget target, OperatingTime photoperiod)
    {
        double?[] asked = [target.LeastLight?.MicromolesPerSquareMetre, photoperiod.Hours > 0 ? target.LeastDaily?.LightOver(photoperiod).MicromolesPerSquareMetre : null];
        return asked.Max();
    }

    private static string Mean(LightFigures light, QuantityText text) =>
        $"{text.Number(light.Mean.MicromolesPerSquareMetre)} on average{(light.ShareOnTarget is { } share ? $", {text.Percent(share)} of the bench on target" : "")}";

    private static string Hours(LightPlace place, QuantityText text) => $"{text.Number(place.Stage!.Photoperiod.Hours, place.Stage.Photoperiod.Hours % 1 == 0 ? 0 : 1)} hours";

    private static string Heights(FittedLight fit, ReadingText lengths) =>
        fit.OneHeight ? lengths.Near(fit.Heights.Low) : $"{lengths.Near(fit.Heights.Low)} and {lengths.Near(fit.Heights.High)}";
}
