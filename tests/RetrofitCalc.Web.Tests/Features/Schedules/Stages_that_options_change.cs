using Bunit;
using RetrofitCalc.Engine;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Web.Features.Options;
using RetrofitCalc.Web.Features.Schedules;
using RetrofitCalc.Web.Shared;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Features.Schedules;

/// <summary>An option lights the stage of the season "Plugs" in the rack at half its level.</summary>
public class Stages_that_options_change
{
    private static readonly StagePlace First = new(new(0, 0), 0);

    private static string StageName => SmallStudies.TenWithTubes().Areas[0].Seasons[0].Stages[0].Name;

    private static Study Dimmed(Study study) => study with
    {
        Options = [study.Options[0] with { Stages = [new(study.Areas[0].Id, "Plugs", study.Areas[0].Seasons[0].Stages[0].Name) { Dimming = 0.5 }] }],
    };

    private static Study Study => Dimmed(SmallStudies.TenWithTubes());

    private static IEnumerable<string> ProblemsOfOptions(Study study) =>
        StudyEvaluation.Check(study).Where(problem => problem.Path.StartsWith("Options[0].Stages", StringComparison.Ordinal)).Select(problem => problem.Message);

    [Fact]
    public void follow_the_name_of_a_stage_and_of_a_season()
    {
        var renamed = ScheduleEdits.RenameSeason(ScheduleEdits.RenameStage(Study, First, "Rooting"), First.Season, "Spring");
        Assert.Equal(Study.Options[0].Stages[0] with { Season = "Spring", Stage = "Rooting" }, Assert.Single(renamed.Options[0].Stages));
        Assert.Empty(ProblemsOfOptions(renamed));
    }

    [Fact]
    public void stay_with_another_stage_that_has_the_old_name()
    {
        var two = ScheduleEdits.AddStage(Study, First.Season);
        var alike = ScheduleEdits.RenameStage(two, First with { Index = 1 }, StageName);
        Assert.Equal(StageName, ScheduleEdits.RenameStage(alike, First, "Rooting").Options[0].Stages.Single().Stage);
    }

    [Fact]
    public void of_other_stages_and_seasons_stay_as_they_are()
    {
        var two = ScheduleEdits.AddSeason(ScheduleEdits.AddStage(Study, First.Season), 0);
        var renamed = ScheduleEdits.RenameSeason(ScheduleEdits.RenameStage(two, First with { Index = 1 }, "Holding"), new(0, 1), "Winter");
        Assert.Equal(Study.Options[0].Stages, renamed.Options[0].Stages);
    }

    [Fact]
    public void go_with_a_stage_or_season_that_is_deleted()
    {
        var two = ScheduleEdits.AddStage(ScheduleEdits.AddSeason(Study, 0), First.Season);
        var withoutStage = ScheduleEdits.RemoveStage(new EditState(two, []), First).Study;
        var withoutSeason = ScheduleEdits.RemoveSeason(new EditState(two, []), First.Season).Study;
        Assert.All([withoutStage, withoutSeason], study => Assert.Empty(study.Options[0].Stages));
        Assert.All([withoutStage, withoutSeason], study => Assert.Empty(ProblemsOfOptions(study)));
        Assert.Single(ScheduleEdits.RemoveStage(new EditState(two, []), First with { Index = 1 }).Study.Options[0].Stages);
    }

    [Fact]
    public async Task follow_a_name_typed_on_the_schedules_page()
    {
        await using var open = await OpenStudy.Of(Study);
        await open.Page<SchedulesPage>().Find("#f-areas-0-seasons-0-stages-0-name").ChangeAsync(new() { Value = "Rooting" });
        Assert.Equal("Rooting", open.Study.Options[0].Stages.Single().Stage);
        Assert.Empty(open.Session.Problems);
    }

    [Fact]
    public async Task are_listed_on_the_options_page_and_can_be_removed()
    {
        await using var open = await OpenStudy.Of(Study);
        var page = open.Page<OptionsPage>();
        var row = page.Find("ul.stage-changes li");
        Assert.Contains($"Rack, Plugs, {StageName}: level 50\u00A0%", row.TextContent.Replace("\n", "", StringComparison.Ordinal), StringComparison.Ordinal);
        await row.QuerySelector("button")!.ClickAsync(new());
        Assert.Empty(open.Study.Options[0].Stages);
        page.WaitForAssertion(() => Assert.Empty(page.FindAll("ul.stage-changes")));
    }

    [Fact]
    public async Task that_are_no_longer_there_are_refused_beside_the_change()
    {
        var study = Study;
        study = study with { Options = [study.Options[0] with { Stages = [study.Options[0].Stages[0] with { Stage = "Gone" }] }] };
        await using var open = await OpenStudy.Of(study);
        Assert.Contains("names stage \"Gone\"", open.Page<OptionsPage>().Find("ul.stage-changes li .cell-message").TextContent, StringComparison.Ordinal);
    }
}
