using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Tests.CropLight.Verdict;

/// <summary>The sample bench as the lower of two tiers; the upper one has ten like luminaires, and nobody laid it out.</summary>
public class Lines_nobody_laid_out
{
    private static Study Tiers(Measure lower, Measure upper, Func<SurveyLine, SurveyLine>? change = null)
    {
        var (study, line) = (SampleBench.Study, SampleBench.Study.Lines[0] with { Id = "upper", Name = "Upper tier" });
        return study with
        {
            Lines = [study.Lines[0], change?.Invoke(line) ?? line],
            Options = [study.Options[0] with { Measures = [new("bench", lower), new("upper", upper)] }],
        };
    }

    // 72 and 54 µmol/s where 72 and 72 were: an eighth less for both tiers.
    [Fact]
    public void leave_the_light_not_known_where_they_alone_change()
    {
        var stage = Tiers(new KeepAsIs(), new DirectWire("weak")).Verdict();
        Assert.Equal((LightVerdict.NotKnown, null, null, null), (stage.Verdict, stage.Change, stage.After, stage.AtEnd));
        Assert.Equal(-0.125, stage.RatedChange!.Value, 1e-9);
        Assert.NotNull(stage.Now);
        Assert.Contains("Lay out Upper tier in Bench too", stage.Ask, StringComparison.Ordinal);
    }

    [Fact]
    public void do_no_harm_where_they_stay_as_they_are() =>
        Assert.Equal((LightVerdict.Loses, null), (Tiers(new DirectWire("weak"), new KeepAsIs()).Verdict().Verdict, Tiers(new DirectWire("weak"), new KeepAsIs()).Verdict().Ask));

    [Fact]
    public void are_judged_like_a_line_that_is_fitted_and_changed_alike()
    {
        var stage = Tiers(new DirectWire("weak"), new DirectWire("weak")).Verdict();
        Assert.Equal((LightVerdict.Loses, -0.25, null), (stage.Verdict, Math.Round(stage.Change!.Value, 9), stage.Ask));
    }

    // The lower tier gains, of the upper one nobody knows; the lower one loses, and that is enough to know.
    [Theory]
    [InlineData("strong", "weak", LightVerdict.NotKnown)]
    [InlineData("weak", "strong", LightVerdict.Loses)]
    public void are_named_where_something_else_is_done_to_them(string lower, string upper, LightVerdict verdict)
    {
        var option = Evaluate(Tiers(new DirectWire(lower), new DirectWire(upper)));
        var stage = option.Light.Stages[0];
        Assert.Equal(verdict, stage.Verdict);
        Assert.Contains("Lay out Upper tier", string.Join(' ', stage.Warnings.Append(stage.Ask)), StringComparison.Ordinal);
        Assert.Equal(["Bench"], option.AtEqualLight.Without);
    }

    [Fact]
    public void are_not_alike_where_they_hang_at_another_height()
    {
        var study = Tiers(new DirectWire("same"), new DirectWire("same"), line => line with { MountingHeight = Quantities.Length.FromMetres(0.6) });
        Assert.Equal(LightVerdict.NotKnown, study.Verdict().Verdict);
    }

    [Fact]
    public void leave_the_light_not_known_where_they_change_and_are_not_counted() =>
        Assert.Equal(LightVerdict.NotKnown, Tiers(new KeepAsIs(), new DirectWire("weak"), line => line with { Count = null }).Verdict().Verdict);

    // 72 µmol/s kept for good, 54 falling to 37.8: 1/0.525 of twice 300 W, and of 300 W where the upper tier keeps its 600 W.
    [Fact]
    public void get_as_many_more_luminaires_at_equal_light_as_a_line_alike()
    {
        var both = Evaluate(Tiers(new DirectWire("weak"), new DirectWire("weak")).WithSteadyLamps()).AtEqualLight;
        Assert.Equal((2 * 300 / 0.525, true), (both.Connected.Watts, both.Known), Close);
        Assert.Equal(600 + (300 / 0.525), Evaluate(Tiers(new DirectWire("weak"), new KeepAsIs()).WithSteadyLamps()).AtEqualLight.Connected.Watts, 1e-6);
    }

    // The tube of 18 W for that of 15 W: two tiers of ten luminaires with two tubes, 120 W and 700.8 kWh more.
    [Fact]
    public void are_changed_with_a_line_alike_by_what_keeps_the_light()
    {
        var target = SampleBench.Target(0.6 * SampleBench.Study.Verdict().Now!.Daily.MolesPerSquareMetre);
        var study = Tiers(new DirectWire("weak"), new DirectWire("weak")).WithStage(stage => stage with { Target = target });
        var (without, fixes) = (Evaluate(study).After.Site, study.Verdict().Fixes);
        var tube = fixes.Single(fix => fix.Product == "same");
        Assert.Equal(["bench", "upper"], tube.Lines);
        Assert.Equal((120.0, 700.8), (Math.Round(tube.ExtraPower.Watts, 6), Math.Round(tube.ExtraKilowattHours, 6)));
        Assert.All(fixes, fix =>
        {
            var with = Evaluate(LightFixes.Apply(study, "tubes", "bench", fix));
            Assert.Equal(LightVerdict.Keeps, with.Light.Stages[0].Verdict);
            Assert.Equal(fix.ExtraPower.Watts, (with.After.Site.Connected - without.Connected).Watts, 1e-6);
            Assert.Equal(fix.ExtraKilowattHours, with.After.Site.Lighting.KilowattHours - without.Lighting.KilowattHours, 1e-6);
        });
    }

    private static bool Close((double Watts, bool Known) one, (double Watts, bool Known) other) => Math.Abs(one.Watts - other.Watts) < 1e-6 && one.Known == other.Known;

    private static OptionResult Evaluate(Study study) => StudyEvaluation.Run(study, new()).Options[0];
}
