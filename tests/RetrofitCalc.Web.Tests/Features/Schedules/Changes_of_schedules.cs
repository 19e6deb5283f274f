using NodaTime;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Surveys;
using RetrofitCalc.Web.Features.Schedules;
using RetrofitCalc.Web.Shared;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Features.Schedules;

public class Changes_of_schedules
{
    [Fact]
    public void a_new_season_takes_the_free_part_of_the_year()
    {
        var season = ScheduleEdits.AddSeason(SmallStudies.OneRack(), 0).Areas[0].Seasons[1];
        Assert.Equal((new AnnualDate(11, 1), new AnnualDate(2, 28)), (season.Start, season.End));
    }

    [Fact]
    public void a_copied_season_makes_the_other_area_grow_a_crop()
    {
        var study = SmallStudies.OneRack();
        study = study with { Areas = [.. study.Areas, new Area { Id = "bench", Name = "Bench" }] };
        var bench = ScheduleEdits.CopySeason(study, new(0, 0), 1).Areas[1];
        Assert.True(bench.GrowsCrop);
        Assert.Equal(study.Areas[0].Seasons[0], Assert.Single(bench.Seasons));
    }

    [Fact]
    public void a_stage_added_behind_one_that_filled_the_season_gives_that_one_a_length()
    {
        var stages = ScheduleEdits.AddStage(SmallStudies.OneRack(), new(0, 0)).Areas[0].Seasons[0].Stages;
        Assert.Equal([14, null], stages.Select(s => s.Days));
    }

    [Fact]
    public void deleting_a_season_takes_its_kept_texts_along_and_moves_those_behind_it()
    {
        var study = ScheduleEdits.AddSeason(SmallStudies.OneRack(), 0);
        var state = new EditState(study, [new CellDraft("Areas[0].Seasons[0]", "Start", "x", ""), new CellDraft("Areas[0].Seasons[1].Stages[0]", "LightsOn", "y", "")]);
        var after = ScheduleEdits.RemoveSeason(state, new(0, 0));
        Assert.Equal("Areas[0].Seasons[0].Stages[0]", Assert.Single(after.Drafts).Line);
    }
}
