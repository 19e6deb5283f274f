using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Reports;

/// <summary>What could go wrong, and what would narrow the answer.</summary>
internal static class Doubts
{
    private const int MostNamed = 3;

    public static IReadOnlyList<string> Risks(SummaryContext context) => [.. OfOption(context), .. OfSurvey(context)];

    public static IReadOnlyList<string> Narrowing(SummaryContext context) =>
        context.Asked is { Ranges.Swings: { Count: > 0 } swings }
            ? [.. swings.Take(MostNamed).Select(s => $"{s.Ask} Payback then: {context.Text.Range(s.PaybackWithout, context.Years)}.")]
            : [.. context.Result.Questions.Take(MostNamed).Select(question => question.Text)];

    private static IEnumerable<string> OfOption(SummaryContext context)
    {
        if (context.Asked is not { } option) yield break;
        if (option.SimplePayback.Years is null) yield return $"Never pays back in {context.Years} years on the likely figures.";
        else if (option.Ranges.Payback.Low is null || option.Ranges.Payback.High is null) yield return $"At the far end of the range it never pays back in {context.Years} years.";
        if (option.SimplePayback.LostAgain) yield return "Once back, the money is lost again for a time to a later replacement.";
        foreach (var refused in option.Refused.Take(MostNamed)) yield return $"{context.LineName(refused.Line)} is kept as it is: {refused.Reason}";
        if (option.FirstCost.UnpricedLines.Count > 0)
            yield return $"First cost leaves out parts without a known price: {Names(context, option.FirstCost.UnpricedLines)}.";
        foreach (var dim in context.Light.People.Where(place => place.Enough == false).Take(MostNamed))
            yield return $"{context.AreaName(dim.Area)} would have {context.Text.Illuminance(dim.After!.Value)} for people; {context.Text.Illuminance(dim.Wanted)} is wanted ({dim.Task}).";
    }

    private static IEnumerable<string> OfSurvey(SummaryContext context)
    {
        var dark = context.Result.Now.Lines.Where(line => line.Hours == OperatingTime.Zero).Sum(line => line.Luminaires);
        if (dark > 0) yield return $"{context.Text.Count(dark)} luminaires stand where no lit hours are given: they count with no energy and no saving.";
        var unmeasured = context.Result.Now.Lines.Count(line => line.PerLuminaire.Evidence != EvidenceKind.Measured);
        if (unmeasured > 0)
            yield return $"Watts of {unmeasured} of {context.Result.Now.Lines.Count} lines are not measured here (±{QuantityTextSpace}{context.Text.Percent(context.Study.Assumptions.WattsUncertainty)}).";
        var uncounted = context.Study.Lines.Count - context.Result.Now.Lines.Count;
        if (uncounted > 0) yield return $"{uncounted} survey lines are not counted yet: their set-up or count is not known.";
        var warnings = context.Result.Notices.Count(notice => notice is { Severity: NoticeSeverity.Warn, Open: true });
        if (warnings > 0) yield return $"{warnings} safety warnings are to be answered before ordering; they stand in annex C.";
    }

    private const char QuantityTextSpace = '\u00A0';

    private static string Names(SummaryContext context, IReadOnlyList<string> lines) =>
        string.Join(", ", lines.Take(MostNamed).Select(context.LineName)) + (lines.Count > MostNamed ? $" and {lines.Count - MostNamed} more" : "");
}
