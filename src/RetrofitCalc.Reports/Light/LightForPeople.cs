using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Reports;

/// <summary>Mean illuminance where people work.</summary>
internal static class LightForPeople
{
    public static IEnumerable<ReportSection> Of(SummaryContext context)
    {
        if (context.Light.People.Count == 0) yield break;
        yield return new ReportSection("Light for people",
            ["Mean illuminance on the plane people work on, maintained. Local rules may ask for more; glare, emergency light and flicker are questions of annex C."],
            [new ReportTable("", [new("Area and task", 1.8), new("Wanted", 1, true), new("Now", 1, true), new("After", 1, true), new("Enough", 0.8), new("How found, and source of what is wanted", 3.2)],
                [.. context.Light.People.Select(place => Row(place, context))])]);
    }

    private static ReportRow Row(TaskLight place, SummaryContext context) => new([
        $"{context.AreaName(place.Area)}: {place.Task}", context.Text.Illuminance(place.Wanted), PeopleText.Now(place, context.Text),
        place.After is { } after ? context.Text.Illuminance(after) : QuantityText.NotKnown,
        place.Enough switch { true => "yes", false => "too little", _ => QuantityText.NotKnown },
        $"{place.Basis.TrimEnd('.')}. {SourceWords.Full(place.Source)}"]);
}
