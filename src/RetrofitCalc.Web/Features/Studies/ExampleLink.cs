using RetrofitCalc.Data;
using RetrofitCalc.Files.Examples;

namespace RetrofitCalc.Web.Features.Studies;

/// <summary>A lasting address for the worked example: opens the one in the database, or puts it back when it was deleted.</summary>
public static class ExampleLink
{
    public static void MapExampleLink(this IEndpointRouteBuilder app) =>
        app.MapGet("/examples/quillmere", async (StudyStore store, CancellationToken stop) =>
        {
            var example = WorkedExample.Load();
            var listed = (await store.ListAsync(archived: false, stop)).FirstOrDefault(s => s.Invented && s.Name == example.Name);
            var id = listed?.Id ?? (await store.AddAsync(example, stop)).Id;
            return TypedResults.Redirect($"/studies/{id}/survey");
        });
}
