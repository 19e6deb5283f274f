using System.Globalization;
using RetrofitCalc.Data;
using RetrofitCalc.Files.Spectra;

namespace RetrofitCalc.Web.Features.Light.Spectra;

/// <summary>A spectrum of a study as a CSV file that can be taken in again.</summary>
public static class SpectrumDownloads
{
    public static void MapSpectrumDownloads(this IEndpointRouteBuilder app) =>
        app.MapGet("/studies/{id:guid}/light/spectra/{spectrum}.csv", async (Guid id, string spectrum, StudyStore store, CancellationToken stop) =>
            await store.FindAsync(id, stop) is { Study: var study } && StudySpectra.Find(study, spectrum) is { } found
                ? TypedResults.File(SpectrumCsv.Write(found, CultureInfo.GetCultureInfo(study.Site.Culture)), "text/csv", "spectrum.csv")
                : (IResult)TypedResults.NotFound());
}
