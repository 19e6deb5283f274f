using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Reports;
using RetrofitCalc.Web.Features.Light;
using RetrofitCalc.Web.Shared;
using RetrofitCalc.Web.Tests.Features.Results;
using RetrofitCalc.Web.Tests.Harness;
using static RetrofitCalc.Web.Tests.Features.Light.LightSamples;

namespace RetrofitCalc.Web.Tests.Features.Light;

/// <summary>What the strip and the page's title say of light that is known.</summary>
public class Light_in_sight
{
    private static StudyResult Result(params StageLight[] stages)
    {
        var study = SmallStudies.TenWithTubes();
        study = study with { Areas = [study.Areas[0], study.Areas[0] with { Id = "bench", Name = "Bench" }, study.Areas[0] with { Id = "shelf", Name = "Shelf" }] };
        return Result(study, stages);
    }

    private static StudyResult Result(Study study, StageLight[] stages)
    {
        var now = stages.Select(stage => stage with { Verdict = stage.Now is null ? LightVerdict.NotKnown : LightVerdict.Unchanged, After = stage.Now }).ToList();
        return SampleResult.With(option => option with { Light = new(stages, []) }) with { Study = study, Light = new(now, []) };
    }

    private static StripValue Proposed(StudyResult result) => StripLight.Proposed(result, result.Chosen!, QuantityText.For(result.Study))!;

    [Fact]
    public void counts_areas_on_target_and_names_the_one_that_loses_most()
    {
        var result = Result(Loser(), Keeper("bench"), Keeper("shelf"));
        Assert.Equal(new StripValue("3 of 3", "on target"), StripLight.Now(result));
        Assert.Equal(new StripValue("2 of 3", "Rack −13\u00A0%"), Proposed(result));
    }

    [Fact]
    public void says_of_how_many_areas_nothing_is_known()
    {
        var result = Result(Keeper("bench"), Stage(LightVerdict.NotKnown, "shelf"));
        Assert.Equal(new StripValue("1 of 2", "on target, 1 not known"), Proposed(result));
    }

    // 160 · 16 · 0.0036 = 9.2 mol/m² where 10 are wanted.
    [Fact]
    public void does_not_call_an_area_on_target_because_it_keeps_too_little_light()
    {
        var dim = Keeper("rack") with { Now = Figures(162), After = Figures(160) };
        Assert.Equal(new StripValue("1 of 2", "on target"), Proposed(Result(dim, Keeper("bench"))));
    }

    [Fact]
    public void does_not_call_an_area_on_target_that_has_none()
    {
        var untargeted = Keeper("rack") with { Target = null };
        Assert.Equal(new StripValue("1 of 2", "on target, 1 not known"), Proposed(Result(untargeted, Keeper("bench"))));
        Assert.Equal(new StripValue("not known", Unknown: true), Proposed(Result(untargeted)));
    }

    [Fact]
    public void is_grey_where_nothing_is_known_of_any()
    {
        var result = Result(Stage(LightVerdict.NotKnown), Stage(LightVerdict.NotKnown, "shelf"));
        Assert.Equal(new StripValue("not known", Unknown: true), Proposed(result));
        Assert.Equal(new StripValue("not known", Unknown: true), StripLight.Now(result));
    }

    // 200 now and 194 after, in 16 h 11.5 and 11.2 mol/m², where 8 to 11 are wanted.
    [Fact]
    public void counts_no_area_on_target_that_has_more_than_wanted()
    {
        var narrow = AtLeast(8) with { MostDaily = DailyLight.FromMolesPerSquareMetre(11) };
        var result = Result(Keeper("bench") with { Target = narrow }, Keeper("shelf"));
        Assert.Equal(new StripValue("1 of 2", "on target"), StripLight.Now(result));
        Assert.Equal(new StripValue("1 of 2", "on target"), Proposed(result));
    }

    [Fact]
    public void is_nothing_where_nothing_grows() => Assert.Null(StripLight.Now(Result()));

    [Fact]
    public void titles_the_page_with_the_loss_and_leads_with_the_day()
    {
        var result = Result(Loser(), Keeper("bench"));
        Assert.Equal("Rack would lose 13\u00A0% of its light, and fall below target", LightFinding.Title(result));
        // 182 · 16 · 0.0036 = 10.5; 158 · 16 · 0.0036 = 9.1
        Assert.StartsWith("Plugs, Growing: the day's light falls from 10.5 to 9.1\u00A0mol/m²", LightFinding.Lead(result), StringComparison.Ordinal);
    }

    [Fact]
    public void does_not_call_an_area_known_because_others_are()
    {
        Assert.Equal("Whether Shelf keeps its light is not known", LightFinding.Title(Result(Keeper("bench"), Stage(LightVerdict.NotKnown, "shelf"))));
        Assert.Equal("Every growing area keeps its light", LightFinding.Title(Result(Keeper("bench"), Keeper("shelf"))));
    }
}
