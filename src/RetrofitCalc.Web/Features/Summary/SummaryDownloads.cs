using Microsoft.AspNetCore.Http.HttpResults;
using NodaTime;
using RetrofitCalc.Data;
using RetrofitCalc.Engine.Safety;
using RetrofitCalc.Web.Shared;

namespace RetrofitCalc.Web.Features.Summary;

/// <summary>Files one can take away from a study: of the draft as it stands, or of an issued revision exactly as it was.</summary>
public sealed class SummaryDownloads(StudyStore studies, StudyHistory history, SafetyRuleBook rules, IClock clock)
{
    /// <summary>A file that can be made of an edition.</summary>
    public sealed record Kind(string Path, string ContentType, string Ending, Func<SummaryFiles, byte[]> Make);

    public static IReadOnlyList<Kind> Kinds { get; } =
    [
        new("summary.pdf", "application/pdf", ".pdf", files => files.Pdf()),
        new("summary.xlsx", "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet", ".xlsx", files => files.Workbook()),
        new("results.csv", "text/csv; charset=utf-8", "-results.csv", files => files.ResultsTable()),
        new("checklist.pdf", "application/pdf", "-checklist.pdf", files => files.Checklist()),
    ];

    /// <summary>The draft as saved; null when there is no such study.</summary>
    public async Task<Edition?> DraftAsync(Guid id, CancellationToken stop) =>
        await studies.FindAsync(id, stop) is { } stored
            ? new Edition(stored.Study, false, stored.Revision, TimeText.Today(clock, stored.Study.Site))
            : null;

    /// <summary>An issued revision; null when this study has none of that id.</summary>
    public async Task<Edition?> IssuedAsync(Guid id, Guid revision, CancellationToken stop)
    {
        var issued = (await history.RevisionsAsync(id, stop)).FirstOrDefault(r => r.Id == revision && r.Kind == RevisionKind.Issued);
        if (issued is null || await history.FindAsync(revision, stop) is not { } study) return null;
        return new Edition(study, true, issued.Revision, TimeText.DayAt(issued.At, study.Site)) { ForWhom = issued.Note };
    }

    /// <summary>Makes a file, or says what must be mended first.</summary>
    public Results<FileContentHttpResult, NotFound, ProblemHttpResult> Make(Edition? edition, Kind kind)
    {
        if (edition is null) return TypedResults.NotFound();
        var files = new SummaryFiles(edition, rules);
        return files.Problems.Count == 0
            ? TypedResults.File(kind.Make(files), kind.ContentType, edition.FileName + kind.Ending)
            : TypedResults.Problem(string.Join("\n", files.Problems.Select(p => $"{p.Path}: {p.Message}")), title: "This study cannot be evaluated yet.", statusCode: 422);
    }

    /// <summary>The study file needs no evaluation: it can be taken away even while something must be mended.</summary>
    public Results<FileContentHttpResult, NotFound> StudyFile(Edition? edition) => edition is null
        ? TypedResults.NotFound()
        : TypedResults.File(new SummaryFiles(edition, rules).StudyJson(), "application/json", edition.FileName + ".study.json");
}

/// <summary>Addresses of the downloads.</summary>
public static class SummaryDownloadAddresses
{
    public static void MapStudyDownloads(this IEndpointRouteBuilder app)
    {
        foreach (var kind in SummaryDownloads.Kinds)
        {
            app.MapGet($"/studies/{{id:guid}}/{kind.Path}", async (Guid id, string? option, string? whom, SummaryDownloads downloads, CancellationToken stop) =>
                downloads.Make(await downloads.DraftAsync(id, stop) is { } draft ? draft with { Option = option, ForWhom = whom ?? "" } : null, kind));
            app.MapGet($"/studies/{{id:guid}}/issued/{{revision:guid}}/{kind.Path}", async (Guid id, Guid revision, SummaryDownloads downloads, CancellationToken stop) =>
                downloads.Make(await downloads.IssuedAsync(id, revision, stop), kind));
        }
        app.MapGet("/studies/{id:guid}/file", async (Guid id, SummaryDownloads downloads, CancellationToken stop) =>
            downloads.StudyFile(await downloads.DraftAsync(id, stop)));
        app.MapGet("/studies/{id:guid}/issued/{revision:guid}/file", async (Guid id, Guid revision, SummaryDownloads downloads, CancellationToken stop) =>
            downloads.StudyFile(await downloads.IssuedAsync(id, revision, stop)));
    }
}
