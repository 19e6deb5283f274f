using RetrofitCalc.Engine;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Tracing;
using RetrofitCalc.Files.Examples;
using RetrofitCalc.Files.Safety;
using RetrofitCalc.Web.Features.Results;

namespace RetrofitCalc.Web.Tests.Features.Light;

public class Steps_of_light
{
    private static readonly StudyResult Result = StudyEvaluation.Run(WorkedExample.Load(), SafetyRuleFile.Load());

    private static IReadOnlyList<StageLight> Known => [.. Result.Chosen!.Light.Stages.Where(stage => stage is { Now: not null, After: not null, Verdict: not LightVerdict.Unchanged })];

    private static IReadOnlyList<TraceStep> Steps(StageLight stage, string? option) => LightExplanation.Of(Result.Study, stage.Area, (stage.Season, stage.Stage), option);

    [Fact]
    public void end_at_the_change_the_stage_is_judged_by()
    {
        Assert.NotEmpty(Known);
        Assert.All(Known, stage => Assert.Equal(stage.Change!.Value, Steps(stage, Result.Chosen!.Option.Id)[^1].Result.Value, 1e-9));
    }

    [Fact]
    public void can_be_redone_from_what_they_show()
    {
        foreach (var step in Known.SelectMany(stage => Steps(stage, Result.Chosen!.Option.Id)))
        {
            if (step.Name.StartsWith("Light of a day", StringComparison.Ordinal))
                Assert.Equal(step.Inputs[0].Value * step.Inputs[1].Value * 0.0036, step.Result.Value, 1e-9);
            if (step.Name.StartsWith("Change", StringComparison.Ordinal))
                Assert.Equal(step.Inputs[0].Value / step.Inputs[1].Value - 1, step.Result.Value, 1e-9);
            if (step.Name.StartsWith("How far", StringComparison.Ordinal))
                Assert.Equal(step.Inputs[0].Value * Math.Sqrt(step.Inputs.Skip(1).Sum(part => part.Value * part.Value)), step.Result.Value, 1e-9);
        }
    }

    [Fact]
    public void end_at_the_light_of_now_without_an_option()
    {
        var stage = Known[0];
        var last = Steps(stage, null)[^1];
        Assert.Equal("Light of a day now", last.Name);
        Assert.Equal(stage.Now!.Daily.MolesPerSquareMetre, last.Result.Value, 1e-9);
    }

    [Fact]
    public void begin_with_the_readings_and_how_they_were_weighted()
    {
        var first = ExplainedStep.OfLight(Result.Study, Known[0], Result.Chosen!.Option.Id)[0];
        Assert.StartsWith("Mean of ", first.Name);
        Assert.Contains("(E-55, E-60)", first.Formula);
        Assert.EndsWith("µmol/m²·s", first.Result);
    }

    [Fact]
    public void refuse_a_stage_the_study_does_not_have() =>
        Assert.Throws<ArgumentException>(() => LightExplanation.Of(Result.Study, Known[0].Area, ("Summer", "no such"), null));
}
