using RetrofitCalc.Engine.Tracing;
using RetrofitCalc.Files.Examples;
using RetrofitCalc.Web.Features.Results;

namespace RetrofitCalc.Web.Tests.Features.Results;

/// <summary>"Where does this come from?" shows the engine's own steps, the figure last.</summary>
public class Steps_of_a_figure
{
    private static readonly Engine.Studies.Study Example = WorkedExample.Load();
    private static readonly Engine.Results.StudyResult Result = Engine.StudyEvaluation.Run(Example, new Engine.Safety.SafetyRuleBook());

    [Fact]
    public void end_with_the_connected_load_of_the_site()
    {
        var steps = ExplainedStep.Of(Example, ExplainedFigure.Connected, null, null);
        Assert.Equal($"{Result.Now.Site.Connected.Watts:N0}\u00A0W", steps[^1].Result);
        Assert.All(steps, step => Assert.NotEmpty(step.Formula));
    }

    [Fact]
    public void of_heat_are_watts_times_the_factor_of_the_handbook()
    {
        var last = ExplainedStep.Of(Example, ExplainedFigure.Heat, null, null)[^1];
        Assert.Equal($"{Result.Now.Site.Heat.BtuPerHour:N0}\u00A0BTU/h", last.Result);
    }

    [Fact]
    public void show_money_with_the_sign_of_its_currency() =>
        Assert.Equal($"${Result.Now.Site.Cost.Units:N2}", ExplainedStep.Of(Example, ExplainedFigure.YearlyCost, null, null)[^1].Result);

    [Fact]
    public void can_be_had_for_a_proposed_line()
    {
        var option = Result.Options[0];
        var line = option.After.Lines[0];
        var steps = ExplainedStep.Of(Example, ExplainedFigure.InputPower, line.Line, option.Option.Id);
        Assert.Equal(line.PerLuminaire.Total.Watts, double.Parse(steps[^1].Result.Split('\u00A0')[0], System.Globalization.CultureInfo.GetCultureInfo("en-US")), tolerance: 0.05);
    }
}
