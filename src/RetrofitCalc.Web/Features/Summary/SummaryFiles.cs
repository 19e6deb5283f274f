using System.Globalization;
using NodaTime;
using NodaTime.Text;
using RetrofitCalc.Engine;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Safety;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Spectra;
using RetrofitCalc.Files.Studies;
using RetrofitCalc.Reports;

namespace RetrofitCalc.Web.Features.Summary;

/// <summary>One state of a study as something to hand out.</summary>
/// <param name="Issued">False for a draft.</param>
/// <param name="Revision">Number of the revision printed on it.</param>
/// <param name="Date">Day printed on it: of the issue, or today for a draft.</param>
public sealed record Edition(Study Study, bool Issued, int Revision, LocalDate Date)
{
    /// <summary>Id of the option asked for; null for the study's own choice.</summary>
    public string? Option { get; init; }

    public string ForWhom { get; init; } = "";

    /// <summary>File name without ending: the study's name in safe characters, and the day.</summary>
    public string FileName => $"{Safe(Study.Name)}-{LocalDatePattern.Iso.Format(Date)}{(Issued ? $"-revision-{Revision}" : "-draft")}";

    public SummaryRequest Request(SafetyRuleBook rules) =>
        new() { Date = Date, Rules = rules, ForWhom = ForWhom, Issued = Issued, Revision = Revision, Option = Option, Spectra = ProductSpectra.Of(Study, Option) };

    private static string Safe(string name)
    {
        var plain = name.Normalize(System.Text.NormalizationForm.FormD)
            .Where(c => CharUnicodeInfo.GetUnicodeCategory(c) != UnicodeCategory.NonSpacingMark)
            .Select(c => char.IsAsciiLetterOrDigit(c) ? char.ToLowerInvariant(c) : '-');
        var joined = string.Join('-', string.Concat(plain).Split('-', StringSplitOptions.RemoveEmptyEntries));
        return joined.Length == 0 ? "study" : joined[..Math.Min(60, joined.Length)].TrimEnd('-');
    }
}

/// <summary>Files of an edition, each from the same evaluation.</summary>
public sealed class SummaryFiles(Edition edition, SafetyRuleBook rules)
{
    private readonly Lazy<StudyResult> _result = new(() => StudyEvaluation.Run(edition.Study, rules));

    public IReadOnlyList<StudyProblem> Problems { get; } = StudyEvaluation.Check(edition.Study);

    public StudyResult Result => _result.Value;

    public BudgetSummary Summary => BudgetSummary.From(Result, edition.Request(rules));

    public byte[] StudyJson() => StudyFile.Write(edition.Study);

    public byte[] Pdf() => Written(file => SummaryPdf.Write(Summary, StudyJson(), file));

    public byte[] Checklist() => Written(file => SafetyChecklistPdf.Write(Summary, file));

    public byte[] Workbook() => Written(file => SummaryWorkbook.Write(Summary, Result, file));

    /// <summary>With a byte order mark: without it a spreadsheet takes the text for its own old code page.</summary>
    public byte[] ResultsTable() => Written(file =>
    {
        using var text = new StreamWriter(file, new System.Text.UTF8Encoding(encoderShouldEmitUTF8Identifier: true), leaveOpen: true);
        ResultsCsv.Write(Result, text);
    });

    private static byte[] Written(Action<Stream> write)
    {
        using var file = new MemoryStream();
        write(file);
        return file.ToArray();
    }
}
