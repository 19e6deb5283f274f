using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Tests.CropLight.Verdict;

/// <summary>E-76 with numbers anyone can redo: ten luminaires of 60 W, lit 5,840 h a year at 0.10 a kilowatt-hour, cost 350.40 a year.</summary>
public class Equal_light
{
    // 54 µmol/s for 72: 13.33 luminaires of two 15 W tubes for ten, 400 W instead of 300 W.
    [Fact]
    public void takes_more_of_the_same_where_light_is_lost()
    {
        var option = Evaluate(SampleBench.Study);
        Assert.True(option.AtEqualLight.Differs);
        Assert.Equal(400, option.AtEqualLight.Connected.Watts, 1e-6);
        Assert.Equal(0.3 * 584, option.AnnualBillSaving.Units, 0.07);
        Assert.Equal(0.2 * 584, option.AtEqualLight.AnnualBillSaving.Units, 0.07);
    }

    // Parts and labour for a third more luminaires; recycling of what hangs now stays: 10 × (2 × 1 + 2 × 2.5) = 70, a tenth more for contingency.
    [Fact]
    public void costs_as_many_parts()
    {
        var option = Evaluate(SampleBench.Study);
        var recycling = 70 * 1.1;
        Assert.Equal((option.FirstCost.Total.Units - recycling) * 4 / 3 + recycling, option.AtEqualLight.FirstCost.Units, 1e-6);
        Assert.True(option.AtEqualLight.SimplePayback.Years is null || option.AtEqualLight.SimplePayback.Years > option.SimplePayback.Years);
    }

    // 90 µmol/s for 72: eight luminaires of two 22 W tubes give the light of ten.
    [Fact]
    public void takes_fewer_where_light_is_gained() =>
        Assert.Equal(8 * 44.0, Evaluate(SampleBench.Study.With(new DirectWire("strong"))).AtEqualLight.Connected.Watts, 1e-6);

    [Theory]
    [InlineData("same")]
    [InlineData(null)]
    public void is_the_option_itself_where_nothing_changes_light(string? tube)
    {
        var option = Evaluate(SampleBench.Study.With(tube is null ? new KeepAsIs() : new DirectWire(tube)));
        Assert.Equal(new EqualLight(option.AnnualBillSaving, option.FirstCost.Total, option.SimplePayback, option.After.Site.Connected, Differs: false), option.AtEqualLight);
    }

    [Fact]
    public void leaves_lines_whose_light_nobody_knows()
    {
        var option = Evaluate(SampleBench.Study.WithArea(area => area with { Light = null }));
        Assert.False(option.AtEqualLight.Differs);
        Assert.Equal(option.AnnualBillSaving, option.AtEqualLight.AnnualBillSaving);
    }

    // The stage with both lamps loses a quarter and so does the one with one lamp; an hour less in one of them asks for most.
    [Fact]
    public void follows_the_stage_that_loses_most()
    {
        var study = SampleBench.Study.WithArea(_ => SampleBench.Area(
            new Stage { Name = "Growing", Days = 100, LightsOn = new(6, 0), LightsOff = new(22, 0) },
            new Stage { Name = "Finishing", LightsOn = new(6, 0), LightsOff = new(22, 0) }));
        var shorter = study.With(new DirectWire("weak"), new StageChange("bench", "Year", "Finishing") { LightsOff = new(18, 0) });
        Assert.Equal(300 * 4 / 3.0 * 16 / 12, Evaluate(shorter).AtEqualLight.Connected.Watts, 1e-6);
    }

    // Half of the light stays with a line that is kept: the other half, a quarter weaker, is made up by a third more of it alone.
    [Fact]
    public void makes_up_for_lost_light_by_the_lines_that_change()
    {
        var study = SampleBench.Study.WithLight(light => light with { Layout = [new("bench", default), new("kept", default)] });
        study = study with { Lines = [study.Lines[0], study.Lines[0] with { Id = "kept" }] };
        Assert.Equal(600 + 400, Evaluate(study).AtEqualLight.Connected.Watts, 1e-6);
    }

    private static OptionResult Evaluate(Study study) => StudyEvaluation.Run(study, new()).Options[0];
}
