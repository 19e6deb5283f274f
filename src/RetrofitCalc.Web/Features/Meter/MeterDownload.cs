using NodaTime;
using RetrofitCalc.Data;
using RetrofitCalc.Files.Meters;

namespace RetrofitCalc.Web.Features.Meter;

/// <summary>The meter year of a study as a CSV file that a spreadsheet opens and that can be taken in again.</summary>
public static class MeterDownload
{
    public static void MapMeterDownload(this IEndpointRouteBuilder app) =>
        app.MapGet("/studies/{id:guid}/meter.csv", async (Guid id, StudyStore store, CancellationToken stop) =>
            await store.FindAsync(id, stop) is { Study: { Meter: { } meter } study } && DateTimeZoneProviders.Tzdb.GetZoneOrNull(study.Site.TimeZone) is { } zone
                ? TypedResults.File(MeterCsv.Write(meter, zone), "text/csv", "meter.csv")
                : (IResult)TypedResults.NotFound());
}
