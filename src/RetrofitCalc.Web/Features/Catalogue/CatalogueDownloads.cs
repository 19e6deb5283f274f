using System.Globalization;
using RetrofitCalc.Data;

namespace RetrofitCalc.Web.Features.Catalogue;

/// <summary>The catalogue as files, one for each kind.</summary>
public static class CatalogueDownloads
{
    public static void MapCatalogueDownloads(this IEndpointRouteBuilder app) =>
        app.MapGet("/catalogue/{kind}.csv", async Task<IResult> (string kind, CatalogueStore store, CancellationToken stop) =>
        {
            if (KindView.Find(kind) is not { } view) return TypedResults.NotFound();
            var all = await store.AllAsync(stop);
            return TypedResults.File(view.WriteCsv(all.All, CultureInfo.GetCultureInfo("en-US")), "text/csv; charset=utf-8", $"{view.Path}.csv");
        });
}
