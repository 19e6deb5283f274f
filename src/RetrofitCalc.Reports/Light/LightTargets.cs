namespace RetrofitCalc.Reports;

/// <summary>What the crops want, and where that comes from.</summary>
internal static class LightTargets
{
    public static IEnumerable<ReportSection> Of(SummaryContext context)
    {
        var targets = context.Light.Stages.Select(stage => stage.Target).OfType<Engine.Studies.LightTarget>().DistinctBy(target => (target.Crop, target.Source)).ToList();
        if (targets.Count == 0) yield break;
        yield return new ReportSection("Targets and their sources",
            ["A weak source is a summary or a grower's guide: ask the grower before relying on it. Far red is no part of a target."],
            [new ReportTable("", [new("Crop and stage", 1.6), new("Light wanted", 1.3), new("Lit hours", 0.8), new("Source", 3)],
                [.. targets.Select(target => new ReportRow([target.Crop, LightWords.Wanted(target, context.Text), Hours(target, context.Text),
                    $"{(target.WeakSource ? "Weak source: " : "")}{SourceWords.Full(target.Source)}{(target.Note.Length > 0 ? $". {target.Note}" : "")}"]))])]);
    }

    private static string Hours(Engine.Studies.LightTarget target, QuantityText text) => (target.FewestHours, target.MostHours) switch
    {
        ({ } fewest, { } most) => $"{text.Number(fewest.Hours, 1)}–{text.Hours(most)}",
        ({ } fewest, null) => $"at least {text.Hours(fewest)}",
        (null, { } most) => $"at most {text.Hours(most)}",
        _ => "no bound",
    };
}
