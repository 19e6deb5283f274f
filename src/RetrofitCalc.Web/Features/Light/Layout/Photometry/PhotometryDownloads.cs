using RetrofitCalc.Data;
using RetrofitCalc.Files.Photometry;

namespace RetrofitCalc.Web.Features.Light.Layout.Photometry;

/// <summary>A photometric file of a study, written back in the form of 2002.</summary>
public static class PhotometryDownloads
{
    public static void MapPhotometryDownloads(this IEndpointRouteBuilder app) =>
        app.MapGet("/studies/{id:guid}/light/photometry/{file}.ies", async (Guid id, string file, StudyStore store, CancellationToken stop) =>
            await store.FindAsync(id, stop) is { Study: var study } && study.Distributions.FirstOrDefault(taken => taken.Id == file) is { } found && StudyDistributions.Find(study, file) is not null
                ? TypedResults.File(StudyDistributions.Write(found), "text/plain", "luminaire.ies")
                : (IResult)TypedResults.NotFound());
}
