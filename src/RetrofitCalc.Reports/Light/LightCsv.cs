using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Reports;

/// <summary>Rows on light in the results table: each stage, equal light, and light for people.</summary>
internal static class LightCsv
{
    public static IEnumerable<CsvFigure> Of(StudyResult result, string money) =>
    [
        .. result.Light.Stages.SelectMany(stage => Stage(result, stage)),
        .. AtEqualLight(result, money),
        .. result.Light.People.Select(place => new CsvFigure($"light for people {LightWords.Area(result.Study, place.Area)}: mean", "lx", place.Now?.Lux,
            [.. result.Options.Select(option => option.Light.People.FirstOrDefault(after => after.Area == place.Area)?.After?.Lux)])),
    ];

    private static IEnumerable<CsvFigure> Stage(StudyResult result, StageLight now)
    {
        var name = $"crop light {LightWords.Area(result.Study, now.Area)}, {now.Season}, {now.Stage}";
        CsvFigure Row(string what, string unit, double? present, Func<StageLight, double?> after) => new($"{name}: {what}", unit, present,
            [.. result.Options.Select(option => option.Light.Stages.FirstOrDefault(stage => (stage.Area, stage.Season, stage.Stage) == (now.Area, now.Season, now.Stage)) is { } stage ? after(stage) : null)]);
        return
        [
            Row("mean when new", "umol/m2/s; empty = not known", now.Now?.Mean.MicromolesPerSquareMetre, stage => stage.After?.Mean.MicromolesPerSquareMetre),
            Row("daily when new", "mol/m2/d", now.Now?.Daily.MolesPerSquareMetre, stage => stage.After?.Daily.MolesPerSquareMetre),
            Row("lowest over mean", "1", now.Now?.MinimumToMean, stage => stage.After?.MinimumToMean),
            Row("daily at the end of the interval", "mol/m2/d", now.AtEnd?.Daily.MolesPerSquareMetre, stage => stage.AtEnd?.Daily.MolesPerSquareMetre),
            Row("change", "1; empty = not known", null, stage => stage.Change),
            Row("change may be off by", "1", null, stage => stage.ChangeUncertainty),
            Row("verdict", "0 not known, 1 unchanged, 2 keeps, 3 keeps at first, 4 loses", (int)now.Verdict, stage => (int)stage.Verdict),
        ];
    }

    private static IEnumerable<CsvFigure> AtEqualLight(StudyResult result, string money)
    {
        CsvFigure Row(string name, string unit, Func<EqualLight, double?> figure) => new($"at equal light: {name}", unit, null, [.. result.Options.Select(option => option.AtEqualLight.Known ? figure(option.AtEqualLight) : null)]);
        return
        [
            Row("bill and fuel saved, steady year", money + "/yr; empty = not known", equal => equal.AnnualBillSaving.Units),
            Row("first cost", money + "; empty = not known", equal => equal.FirstCost.Units),
            Row("simple payback", "yr; empty = never, or not known", equal => equal.SimplePayback.Years),
            Row("connected load", "W; empty = not known", equal => equal.Connected.Watts),
            new("at equal light: growing areas left out, their light not known", "1", null, [.. result.Options.Select(option => (double?)option.AtEqualLight.Without.Count)]),
        ];
    }
}
