using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Tests.CropLight.Verdict;

public class Remarks_on_light
{
    [Fact]
    public void name_the_areas_nobody_has_read() =>
        Assert.Contains(StudyEvaluation.Run(SampleBench.Study.WithArea(area => area with { Light = null }), new()).Remarks, remark => remark.Contains("Nobody has read the light in Bench", StringComparison.Ordinal));

    [Fact]
    public void say_how_light_is_counted_where_an_option_changes_it()
    {
        Assert.Contains(StudyEvaluation.Run(SampleBench.Study, new()).Remarks, remark => remark.Contains("new luminaires give what they are rated for", StringComparison.Ordinal));
        Assert.DoesNotContain(StudyEvaluation.Run(SampleBench.Study.With(new KeepAsIs()), new()).Remarks, remark => remark.StartsWith("Light after", StringComparison.Ordinal));
    }
}
