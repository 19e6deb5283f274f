using NodaTime;
using RetrofitCalc.Data;
using RetrofitCalc.Reports;
using RetrofitCalc.Web.Shared;

namespace RetrofitCalc.Web.Features.Light.Sheet;

/// <summary>The measuring sheet of an area, as the study was last saved.</summary>
public static class MeasuringSheetDownload
{
    public static string Address(Guid study, string area) => $"/studies/{study}/measuring-sheet?area={Uri.EscapeDataString(area)}";

    public static void MapMeasuringSheet(this IEndpointRouteBuilder app) =>
        app.MapGet("/studies/{id:guid}/measuring-sheet", async (Guid id, string? area, StudyStore store, IClock clock, CancellationToken stop) =>
            await store.FindAsync(id, stop) is { Study: var study } && MeasuringSheet.Of(study, area ?? "", TimeText.Today(clock, study.Site)) is { } sheet
                ? TypedResults.File(Written(sheet), "application/pdf", "measuring-sheet.pdf")
                : (IResult)TypedResults.NotFound());

    private static byte[] Written(MeasuringSheet sheet)
    {
        using var file = new MemoryStream();
        MeasuringSheetPdf.Write(sheet, file);
        return file.ToArray();
    }
}
