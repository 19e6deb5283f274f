using RetrofitCalc.Data;
using RetrofitCalc.Files.Tariffs;

namespace RetrofitCalc.Web.Features.Tariffs.Library;

/// <summary>The tariff of a study as a rate record that other people's programs can read.</summary>
public static class TariffDownloads
{
    public static void MapTariffDownload(this IEndpointRouteBuilder app) =>
        app.MapGet("/studies/{id:guid}/tariff/record.json", async (Guid id, StudyStore store, CancellationToken stop) =>
            await store.FindAsync(id, stop) is { } stored && RateRecordFile.Write(stored.Study.Tariff).Value is { } record
                ? TypedResults.File(record.Json, "application/json", "rate-record.json")
                : (IResult)TypedResults.NotFound());
}
