using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Safety;

namespace RetrofitCalc.Reports;

/// <summary>Annex C: notices and checklist. Nothing is answered in advance, nothing dropped.</summary>
internal static class SafetyAnnex
{
    private const int MostLines = 4;
    private const int MostStops = 3;
    private const int MostAreas = 2;
    private const int LongestName = 40;

    public static SafetySheets Of(SummaryContext context) => new(
        [context.Request.Rules.Disclaimer.Length > 0 ? context.Request.Rules.Disclaimer : "Notices and questions only. No wiring instruction."],
        [.. context.Notices.Select(notice => Notice(notice, context))],
        [.. ChecklistState.Of(context.Study, context.Request.Rules, context.Notices).Select(phase => Phase(phase, context))],
        new(CircuitTable.Title, CircuitTable.Cautions, [CircuitTable.Of(context.Result, context.Asked, context.Text)]));

    public static IReadOnlyList<string> OpenStops(SummaryContext context)
    {
        var open = context.Notices.Where(notice => notice is { Severity: NoticeSeverity.Stop, Open: true }).ToList();
        var shown = open.Take(open.Count > MostStops ? MostStops - 1 : MostStops)
            .Select(notice => $"{notice.Question} {Where(notice, context)} Waits for: {Roles(notice.WhoAnswers, context)}.");
        return open.Count > MostStops ? [.. shown, $"{open.Count - MostStops + 1} more stops are open: see annex C. Nothing is ordered or switched on until they are answered."] : [.. shown];
    }

    private static PrintedNotice Notice(SafetyNotice notice, SummaryContext context) => new(
        $"{notice.Severity.ToString().ToUpperInvariant()} {notice.Rule}, {(notice.Open ? "open" : "answered")}",
        notice.Text, $"{notice.Question} Who answers: {Roles(notice.WhoAnswers, context)}.", $"{Concerns(notice, context)} {Cited(notice, context)}".Trim(),
        string.Join(" ", notice.Answers.Select(a => $"{a.Text} ({Role(a.Role, context)}, {a.Person}, {context.Text.Date(a.Date)})")),
        notice is { Severity: NoticeSeverity.Stop, Open: true });

    /// <summary>Areas instead of lines: short enough for the first sheet.</summary>
    private static string Where(SafetyNotice notice, SummaryContext context)
    {
        var areas = notice.Lines.Select(id => context.Line(id)?.Area).OfType<string>().Distinct().Select(context.AreaName).ToList();
        return areas.Count switch
        {
            0 => "(whole site)",
            <= MostAreas => $"({string.Join("; ", areas.Select(area => ShortText.Of(area, LongestName)))})",
            var n => $"({string.Join("; ", areas.Take(MostAreas).Select(area => ShortText.Of(area, LongestName)))} and {n - MostAreas} more areas)",
        };
    }

    private static string Concerns(SafetyNotice notice, SummaryContext context) => notice.Lines.Count switch
    {
        0 => "(whole site)",
        var n when n == context.Study.Lines.Count && n > 1 => "(all lines)",
        var n => "(" + string.Join("; ", notice.Lines.Take(MostLines).Select(context.LineName)) + (n > MostLines ? $" and {n - MostLines} more lines" : "") + ")",
    };

    private static string Cited(SafetyNotice notice, SummaryContext context) => notice.Sources.Count == 0 ? "" : "Sources: " + string.Join("; ",
        notice.Sources.Select(key => context.Request.Rules.Sources.TryGetValue(key, out var source) ? source.Citation + Status(source.Status) : key)) + ".";

    private static string Status(string status) => status switch
    {
        "MEM" => " (from memory)",
        "CP" => " (common practice)",
        "SEEN2" => " (read in a copy)",
        _ => "",
    };

    private static ReportTable Phase(ChecklistPhaseState phase, SummaryContext context) => new(phase.Phase,
        [new("Item", 0.5), new("What must be so", 4), new("Proof to keep", 1.8), new("Who signs", 1.5), new("Name, signature and date", 2)],
        [.. phase.Items.Select(state => new ReportRow([
            state.Item.Id, state.Item.Text + (state.Applies ? "" : $". {state.Reason}"), state.Item.Evidence, Role(state.Item.SignedBy, context), Signature(state, context)],
            Greyed: !state.Applies))]);

    private static string Signature(ChecklistItemState state, SummaryContext context) => (state.Applies, state.Answer) switch
    {
        (_, { } a) => $"{a.Person} ({Role(a.Role, context)}), {context.Text.Date(a.Date)}",
        (false, _) => "does not apply",
        _ => "",
    };

    private static string Roles(IReadOnlyList<string> codes, SummaryContext context) => string.Join(", ", codes.Select(code => Role(code, context)));

    private static string Role(string code, SummaryContext context) => context.Request.Rules.Roles.GetValueOrDefault(code, code);
}
