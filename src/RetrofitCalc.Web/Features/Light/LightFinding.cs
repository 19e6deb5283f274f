using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Reports;

namespace RetrofitCalc.Web.Features.Light;

/// <summary>The page's finding about light on the crop, as sentences.</summary>
public static class LightFinding
{
    public static string Title(StudyResult? result)
    {
        if (LightPlace.LightOf(result) is not { WorstFirst: [var worst, ..] areas }) return "Light on the crop";
        var name = LightWords.Area(result!.Study, worst.Area);
        var text = QuantityText.For(result.Study);
        return worst.Verdict switch
        {
            LightVerdict.Loses => Loses(name, worst, text),
            LightVerdict.NotKnown when areas.All(stage => stage.Verdict == LightVerdict.NotKnown) => "Whether the crop keeps its light is not known",
            LightVerdict.NotKnown => $"Whether {name} keep{(Many(name) ? "" : "s")} {Their(name)} light is not known",
            LightVerdict.KeepsAtFirst => AtFirst(name, worst, text),
            LightVerdict.Keeps => "Every growing area keeps its light",
            _ => "Nothing is done over any crop",
        };
    }

    public static string Lead(StudyResult? result)
    {
        if (LightPlace.LightOf(result) is not { WorstFirst: [var worst, ..] }) return "No area of this study grows a crop. Say so with the schedules where one does.";
        if (worst.Ask is { } ask) return ask;
        var text = QuantityText.For(result!.Study);
        var fix = worst.Fixes.Count > 0 ? $" What keeps it: {LightWords.Fix(worst.Fixes[0], text)}." : "";
        return $"{worst.Season}, {worst.Stage}: {Days(worst, text)} Wanted: {LightWords.Wanted(worst.Target, text)}.{fix}";
    }

    private static string Loses(string name, StageLight stage, QuantityText text) => stage.Change is < 0 and var change
        ? $"{name} would lose {text.Percent(-change)} of {Their(name)} light{(stage.Target is null ? "" : ", and fall below target")}"
        : $"{name} would have too little light, as {(Many(name) ? "they have" : "it has")} now";

    private static string AtFirst(string name, StageLight stage, QuantityText text) =>
        $"{name} would have enough light at first, and too little {(stage.BelowTargetAfterYears is { } years ? $"after {text.Number(years, 1)} years" : "before the lamps are due")}";

    private static string Days(StageLight stage, QuantityText text) => (stage.Now, stage.After) switch
    {
        ({ } now, { } after) when now.Daily != after.Daily =>
            $"the day's light {(after.Daily.CompareTo(now.Daily) < 0 ? "falls" : "rises")} from {text.DailyNumber(now.Daily)} to {text.Daily(after.Daily)}.",
        ({ } now, _) => $"a day gives {text.Daily(now.Daily)}.",
        _ => $"the day's light is {QuantityText.NotKnown}.",
    };

    private static bool Many(string name) => name.EndsWith('s');

    private static string Their(string name) => Many(name) ? "their" : "its";
}
