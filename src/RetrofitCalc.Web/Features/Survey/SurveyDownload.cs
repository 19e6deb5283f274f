using RetrofitCalc.Data;
using RetrofitCalc.Files.Surveys;
using RetrofitCalc.Web.Shared;

namespace RetrofitCalc.Web.Features.Survey;

/// <summary>The survey as a CSV file that a spreadsheet opens and that imports again.</summary>
public static class SurveyDownload
{
    public static void MapSurveyDownload(this IEndpointRouteBuilder app) =>
        app.MapGet("/studies/{id:guid}/survey.csv", async (Guid id, StudyStore store, CancellationToken stop) =>
            await store.FindAsync(id, stop) is { Study: var study } stored
                ? TypedResults.File(SurveyCsv.Write(study.Lines, SurveyContexts.Of(study, study.Catalogue), StudySession.ReadDrafts(stored.DraftsJson)), "text/csv", "survey.csv")
                : (IResult)TypedResults.NotFound());
}
