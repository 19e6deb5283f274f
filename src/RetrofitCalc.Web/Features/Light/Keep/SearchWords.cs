using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Reports;

namespace RetrofitCalc.Web.Features.Light.Keep;

/// <summary>What a search found, in words.</summary>
public static class SearchWords
{
    public static string Name(LightTry way, QuantityText text) => $"{way.Name}, {text.Length(way.Height)} over the crop, {way.Step ?? "all lamps"}";

    public static string Finding(LightSearchResult found, StageLight stage, QuantityText text) => found switch
    {
        { Ask: { } ask } => ask,
        { Least: { } least } => $"Of {found.Tried.Count} ways {found.Tried.Count(way => way is { Meets: true, TooMuch: false })} keep {(stage.Target is null ? "the light of now" : "the target")}. Least watts: {Name(least, text)}, {text.Watts(least.Power)}.",
        _ => $"None of {found.Tried.Count} ways keeps {(stage.Target is null ? "the light of now" : "the target")} from the first day to the end of the lamps' interval.",
    };

    public static string Target(LightTry way) => way.TooMuch ? "more than wanted" : way.Meets ? "kept" : "missed";

    public static string CurveTitle(LightSearchResult found, QuantityText text)
    {
        var (bright, even) = (found.Curve[0].Light, found.Curve[^1].Light);
        return found.Curve.Count == 1
            ? $"One way is both brightest and most even: {text.Number(bright.Mean.MicromolesPerSquareMetre)} at {text.Evenness(bright.MinimumToMean)}"
            : $"More even means less light: from {text.Number(bright.Mean.MicromolesPerSquareMetre)} at {text.Evenness(bright.MinimumToMean)} to {text.Number(even.Mean.MicromolesPerSquareMetre)} at {text.Evenness(even.MinimumToMean)}";
    }
}
