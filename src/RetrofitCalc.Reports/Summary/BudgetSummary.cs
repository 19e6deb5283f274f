using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Reports;

/// <summary>All a report may know: rounded, labelled and in words. Renderers set it in type and compute nothing.</summary>
public sealed record BudgetSummary
{
    public required SheetHead Head { get; init; }

    /// <summary>Id of the option asked for; null when the study has none.</summary>
    public required string? AskedOption { get; init; }

    /// <summary>The sign printed with amounts.</summary>
    public required string CurrencySign { get; init; }

    /// <summary>The request in one sentence with its sum.</summary>
    public required string Title { get; init; }

    /// <summary>What the change does, in two or three sentences.</summary>
    public required string Lead { get; init; }

    public required IReadOnlyList<KeyFigure> Figures { get; init; }

    /// <summary>What the ranges beside the figures are, and are not.</summary>
    public required string RangeNote { get; init; }

    /// <summary>Safety stops nobody has answered.</summary>
    public required IReadOnlyList<string> OpenStops { get; init; }

    /// <summary>Whether the crop keeps its light; null when none grows.</summary>
    public required CropLightPart? CropLight { get; init; }

    /// <summary>The few rows the board compares.</summary>
    public required ReportTable Comparison { get; init; }

    /// <summary>Every figure of every option.</summary>
    public required ReportTable FullComparison { get; init; }

    /// <summary>First cost, part by part; null when nothing is asked for.</summary>
    public required ReportTable? MoneyGoes { get; init; }

    public required ReportTable Seasons { get; init; }

    /// <summary>What is saved on the electricity bill, line by line; null when nothing is asked for.</summary>
    public required BillSavingPart? Bill { get; init; }

    public required ReportTable Clocks { get; init; }

    public required ReportTable? CashFlow { get; init; }

    /// <summary>What could go wrong.</summary>
    public required IReadOnlyList<string> Risks { get; init; }

    /// <summary>What would narrow the answer.</summary>
    public required IReadOnlyList<string> Narrowing { get; init; }

    /// <summary>Annex A.</summary>
    public required IReadOnlyList<ReportSection> Inputs { get; init; }

    /// <summary>Annex B.</summary>
    public required IReadOnlyList<ReportSection> Assumptions { get; init; }

    /// <summary>Annex C.</summary>
    public required SafetySheets Safety { get; init; }

    /// <summary>Annex D; null where there is no light to speak of.</summary>
    public required LightAnnex? Light { get; init; }

    public required SummaryDrawings Drawings { get; init; }

    /// <summary>Conventions printed at the foot of the first page.</summary>
    public required string Conventions { get; init; }

    /// <summary>Says that nothing here is measured.</summary>
    public const string NotProven = "Estimate before work; not a measured saving.";

    /// <summary>Rounds, labels and words a result.</summary>
    /// <exception cref="ArgumentException">The request names an option the study does not have.</exception>
    public static BudgetSummary From(StudyResult result, SummaryRequest request) => SummaryComposition.Compose(new SummaryContext(result, request));
}

/// <summary>What stands at the head and foot of every sheet.</summary>
/// <param name="Site">Name of the site, with "(invented example)" where so.</param>
/// <param name="Study">Name of the study.</param>
/// <param name="Status">"Draft, revision 3" or "Issued, revision 3".</param>
/// <param name="Date">Day, in words.</param>
/// <param name="ForWhom">Who is asked; may be empty.</param>
/// <param name="Deferral">Who decides what may be done.</param>
public sealed record SheetHead(string Site, string Study, string Status, string Date, string ForWhom, string Deferral)
{
    /// <summary>True for North American Letter paper, false for A4.</summary>
    public required bool LetterPaper { get; init; }

    /// <summary>The same day for document properties.</summary>
    public required NodaTime.LocalDate Day { get; init; }

    /// <summary>Whether a site prints on Letter.</summary>
    public static bool OnLetter(Site site) => site.Jurisdiction is "us" or "ca" || (site.Jurisdiction is null && site.Culture is "en-US" or "en-CA" or "fr-CA");

    /// <summary>Name of the site, marked when it is invented.</summary>
    public static string SiteName(Study study) =>
        study.Site.Name + (study.Invented && !study.Site.Name.Contains("invented", StringComparison.OrdinalIgnoreCase) ? " (invented example)" : "");
}

/// <summary>Notices and checklist, ready to print.</summary>
/// <param name="Sentences">Said before the notices.</param>
/// <param name="Notices">Notices raised, stops first.</param>
/// <param name="Checklist">One table for each phase; items that do not apply are greyed with the reason.</param>
/// <param name="Circuits">Circuit loads, for the electrician.</param>
public sealed record SafetySheets(IReadOnlyList<string> Sentences, IReadOnlyList<PrintedNotice> Notices, IReadOnlyList<ReportTable> Checklist, ReportSection Circuits);

/// <param name="Word">STOP, WARN or NOTE, "open" or "answered".</param>
/// <param name="Text">The notice.</param>
/// <param name="Question">The question, and who answers.</param>
/// <param name="Concerns">Lines it concerns.</param>
/// <param name="Answer">What was answered, by whom and when; empty while open.</param>
/// <param name="OpenStop">True for a stop that still waits.</param>
public sealed record PrintedNotice(string Word, string Text, string Question, string Concerns, string Answer, bool OpenStop);
