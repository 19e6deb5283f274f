using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Tests.CropLight.Verdict;

/// <summary>
/// E-76 with numbers anyone can redo: ten luminaires of 60 W, lit 5,840 h a year at 0.10 a kilowatt-hour, cost 350.40 a year. Lamps that keep
/// all their light, tubes that keep 0.7 of it until they are due at 50,000 h: 54 µmol/s are 37.8 by then, and 1/0.525 as many give 72.
/// </summary>
public class Equal_light
{
    private const double ForEachOne = 1 / 0.525;

    private static Study Steady => SampleBench.Study.WithSteadyLamps();

    [Fact]
    public void takes_more_of_the_same_where_light_is_lost()
    {
        var option = Evaluate(Steady);
        Assert.True(option.AtEqualLight is { Differs: true, Known: true });
        Assert.Empty(option.AtEqualLight.Without);
        Assert.Equal(300 * ForEachOne, option.AtEqualLight.Connected.Watts, 1e-6);
        Assert.Equal(0.3 * 584, option.AnnualBillSaving.Units, 0.07);
        Assert.Equal((0.6 - (0.3 * ForEachOne)) * 584, option.AtEqualLight.AnnualBillSaving.Units, 0.07);
    }

    // Parts and labour for as many more luminaires; recycling of what hangs now stays: 10 × (2 × 1 + 2 × 2.5) = 70, a tenth more for contingency.
    [Fact]
    public void costs_as_many_parts()
    {
        var option = Evaluate(Steady);
        var recycling = 70 * 1.1;
        Assert.Equal(((option.FirstCost.Total.Units - recycling) * ForEachOne) + recycling, option.AtEqualLight.FirstCost.Units, 1e-6);
        Assert.True(option.AtEqualLight.SimplePayback.Years is null || option.AtEqualLight.SimplePayback.Years > option.SimplePayback.Years);
    }

    // Lamps with 0.9 of their light at 9,600 h, the first 100 h not counted, due at the 30,000 h of long burning, tubes as bright as new lamps are: both as they end.
    [Fact]
    public void compares_lamps_and_tubes_as_they_are_when_due() =>
        Assert.Equal(360 * Math.Pow(0.9, (30_000 - 100) / 9500.0) / 0.7, Evaluate(SampleBench.Study.With(new DirectWire("same"))).AtEqualLight.Connected.Watts, 0.01);

    // 90 · 0.7 = 63 µmol/s for 72 · 0.73 = 52: light gained is no saving.
    [Fact]
    public void credits_no_fewer_where_light_is_gained()
    {
        var option = Evaluate(SampleBench.Study.With(new DirectWire("strong")));
        Assert.True(option.AtEqualLight is { Differs: false, Known: true });
        Assert.Equal((option.AnnualBillSaving, 440.0), (option.AtEqualLight.AnnualBillSaving, Math.Round(option.AtEqualLight.Connected.Watts, 6)));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void is_the_option_itself_where_nothing_else_is_fitted(bool renewed)
    {
        var option = Evaluate(SampleBench.Study.With(renewed ? new RenewLikeForLike() : new KeepAsIs()));
        Assert.True(option.AtEqualLight is { Differs: false, Known: true });
        Assert.Empty(option.AtEqualLight.Without);
        Assert.Equal((option.AnnualBillSaving, option.FirstCost.Total, option.After.Site.Connected), (option.AtEqualLight.AnnualBillSaving, option.AtEqualLight.FirstCost, option.AtEqualLight.Connected));
    }

    [Fact]
    public void is_not_known_where_no_light_is()
    {
        var option = Evaluate(SampleBench.Study.WithArea(area => area with { Light = null }));
        Assert.True(option.AtEqualLight is { Differs: false, Known: false });
        Assert.Equal(["Bench"], option.AtEqualLight.Without);
        Assert.Equal(option.AnnualBillSaving, option.AtEqualLight.AnnualBillSaving);
    }

    // 0.6 · 0.7 = 0.42 µmol/s for 72: 171 luminaires cannot hang where one does.
    [Fact]
    public void is_not_known_where_no_number_of_luminaires_gives_it()
    {
        var study = Steady.With(new DirectWire("dim"));
        study = study with { Catalogue = study.Catalogue with { Tubes = [SampleBench.Tube("dim", 0.3)] } };
        Assert.Equal(["Bench"], Evaluate(study).AtEqualLight.Without);
    }

    // Racks nobody has read keep the option's 300 W, and are named.
    [Fact]
    public void names_areas_whose_light_is_not_known()
    {
        var study = Steady;
        study = study with
        {
            Areas = [study.Areas[0], study.Areas[0] with { Id = "racks", Name = "Seedling racks", Light = null }],
            Lines = [study.Lines[0], study.Lines[0] with { Id = "rack", Area = "racks" }],
            Options = [study.Options[0] with { Measures = [new("bench", new DirectWire("weak")), new("rack", new DirectWire("weak"))] }],
        };
        var equal = Evaluate(study).AtEqualLight;
        Assert.Equal(["Seedling racks"], equal.Without);
        Assert.True(equal is { Known: true, Differs: true });
        Assert.Equal(300 + (300 * ForEachOne), equal.Connected.Watts, 1e-6);
    }

    // Both stages lose as much; four hours less in one of them ask for most. Tubes burn 100 × 16 + 265 × 12 = 4,780 h a year, 47,800 h in the study.
    [Fact]
    public void follows_the_stage_that_loses_most()
    {
        var study = Steady.WithArea(area => area with { Seasons = SampleBench.Area(
            new Stage { Name = "Growing", Days = 100, LightsOn = new(6, 0), LightsOff = new(22, 0) },
            new Stage { Name = "Finishing", LightsOn = new(6, 0), LightsOff = new(22, 0) }).Seasons });
        var shorter = study.With(new DirectWire("weak"), new StageChange("bench", "Year", "Finishing") { LightsOff = new(18, 0) });
        Assert.Equal(300 / (0.75 * Math.Pow(0.7, 47_800 / 50_000.0)) * 16 / 12, Evaluate(shorter).AtEqualLight.Connected.Watts, 1e-6);
    }

    // Half of the light stays with a line that is kept: the other half is made up by more of the tubes alone.
    [Fact]
    public void makes_up_for_lost_light_by_the_lines_that_change()
    {
        var study = Steady.WithLight(light => light with { Layout = [new("bench", default), new("kept", default)] });
        study = study with { Lines = [study.Lines[0], study.Lines[0] with { Id = "kept" }] };
        Assert.Equal(600 + (300 * ForEachOne), Evaluate(study).AtEqualLight.Connected.Watts, 1e-6);
    }

    private static OptionResult Evaluate(Study study) => StudyEvaluation.Run(study, new()).Options[0];
}
