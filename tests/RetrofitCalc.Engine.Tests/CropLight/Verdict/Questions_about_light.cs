using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Tests.CropLight.Verdict;

public class Questions_about_light
{
    [Fact]
    public void are_asked_where_a_converted_area_lacks_readings_layout_or_targets()
    {
        Assert.Contains(nameof(AreaLight.Readings), Fields(SampleBench.Study.WithArea(area => area with { Light = null })));
        Assert.Contains(nameof(AreaLight.Layout), Fields(SampleBench.Study.WithLight(light => light with { Layout = [] })));
        Assert.Contains(nameof(Stage.Target), Fields(SampleBench.Study));
        var known = Fields(SampleBench.Study.WithStage(stage => stage with { Target = SampleBench.Target(1) }));
        Assert.DoesNotContain(known, field => field is nameof(AreaLight.Readings) or nameof(AreaLight.Layout) or nameof(Stage.Target));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void are_not_asked_where_no_option_changes_the_light(bool renewed)
    {
        var study = SampleBench.Study.With(renewed ? new RenewLikeForLike() : new KeepAsIs()).WithArea(area => area with { Light = null });
        Assert.DoesNotContain(Fields(study), field => field is nameof(AreaLight.Readings) or nameof(Stage.Target));
    }

    private static IReadOnlyList<string> Fields(Study study) => [.. StudyEvaluation.Run(study, new()).Questions.Where(question => question.Line is null).Select(question => question.Field)];
}
