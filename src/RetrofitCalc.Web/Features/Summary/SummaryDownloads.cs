using RetrofitCalc.Data;
using RetrofitCalc.Files.Studies;

namespace RetrofitCalc.Web.Features.Summary;

/// <summary>Files one can take away from a study.</summary>
public static class SummaryDownloads
{
    public static void MapStudyDownloads(this IEndpointRouteBuilder app) =>
        app.MapGet("/studies/{id:guid}/file", async Task<IResult> (Guid id, StudyStore store, CancellationToken stop) =>
            await store.FindAsync(id, stop) is { } stored
                ? TypedResults.File(StudyFile.Write(stored.Study), "application/json", "study.json")
                : TypedResults.NotFound());
}
