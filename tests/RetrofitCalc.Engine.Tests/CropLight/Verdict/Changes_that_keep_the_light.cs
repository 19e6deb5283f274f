using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Tests.CropLight.Verdict;

/// <summary>E-82 on the sample bench: the weak tubes give 0.75 of the light now and 0.525 at the end of their life; 0.6 of it is wanted.</summary>
public class Changes_that_keep_the_light
{
    private static Study Wanting(double share, Func<LightTarget, LightTarget>? change = null)
    {
        var target = SampleBench.Target(share * SampleBench.Study.Verdict().Now!.Daily.MolesPerSquareMetre);
        return SampleBench.Study.WithStage(stage => stage with { Target = change?.Invoke(target) ?? target });
    }

    // 16 h × 0.6/0.525 = 18.29, to the next quarter of an hour 18.5 h: 0.3 kW × 2.5 h × 365 = 273.75 kWh. The tube of 18 W: 10 × 2 × 3 W, 0.06 × 5,840 kWh.
    [Fact]
    public void come_with_their_watts_and_energy_least_watts_first()
    {
        var fixes = Wanting(0.6).Verdict().Fixes;
        Assert.Equal(fixes.OrderBy(fix => fix.ExtraPower.Watts).ThenBy(fix => fix.ExtraKilowattHours), fixes);
        var hours = fixes.Single(fix => fix.Stage is not null);
        Assert.Equal((new NodaTime.LocalTime(0, 30), 0.0, 273.75), (hours.Stage!.LightsOff, hours.ExtraPower.Watts, Math.Round(hours.ExtraKilowattHours, 6)));
        var tube = fixes.Single(fix => fix.Product == "same");
        Assert.Equal((60.0, 350.4), (Math.Round(tube.ExtraPower.Watts, 6), Math.Round(tube.ExtraKilowattHours, 6)));
        Assert.Contains(fixes, fix => fix.Height is { } height && height.Metres is > 0.2 and < 0.4 && fix.ExtraKilowattHours == 0);
        Assert.True(fixes.Count <= 4);
    }

    // The lowest centimetre that keeps it: one higher does not.
    [Fact]
    public void hang_lamps_no_lower_than_need_be()
    {
        var study = Wanting(0.6);
        var height = study.Verdict().Fixes.Single(fix => fix.Height is not null).Height!.Value;
        LightVerdict At(double metres) => study.With(new LineMeasure("bench", new DirectWire("weak")) { Height = Length.FromMetres(metres) }).Verdict().Verdict;
        Assert.Equal((LightVerdict.Keeps, LightVerdict.KeepsAtFirst), (At(height.Metres), At(height.Metres + 0.01)));
    }

    [Fact]
    public void do_in_the_study_what_they_promise()
    {
        var study = Wanting(0.6);
        var without = StudyEvaluation.Run(study, new()).Options[0].After.Site;
        var fixes = study.Verdict().Fixes;
        Assert.NotEmpty(fixes);
        foreach (var fix in fixes)
        {
            var option = StudyEvaluation.Run(LightFixes.Apply(study, "tubes", "bench", fix), new()).Options[0];
            Assert.Equal(LightVerdict.Keeps, option.Light.Stages[0].Verdict);
            Assert.Equal(fix.Light, option.Light.Stages[0].After);
            Assert.Equal(fix.ExtraPower.Watts, (option.After.Site.Connected - without.Connected).Watts, 1e-6);
            Assert.Equal(fix.ExtraKilowattHours, option.After.Site.Lighting.KilowattHours - without.Lighting.KilowattHours, 1e-6);
            Assert.Empty(StudyEvaluation.Check(LightFixes.Apply(study, "tubes", "bench", fix)));
        }
    }

    [Theory]
    [InlineData(DayLengthResponse.ShortDay)]
    [InlineData(DayLengthResponse.LongDay)]
    public void never_lengthen_the_day_of_a_crop_that_answers_to_it(DayLengthResponse response) =>
        Assert.DoesNotContain(Wanting(0.6, target => target with { DayLength = response }).Verdict().Fixes, fix => fix.Stage is not null);

    [Fact]
    public void lengthen_no_day_beyond_what_the_crop_bears()
    {
        var target = Wanting(0.6, target => target with { DayLength = DayLengthResponse.Neutral, MostHours = OperatingTime.FromHours(18) });
        Assert.DoesNotContain(target.Verdict().Fixes, fix => fix.Stage is not null);
        var longer = Wanting(0.6, target => target with { DayLength = DayLengthResponse.Neutral, MostHours = OperatingTime.FromHours(19) });
        Assert.Equal("", longer.Verdict().Fixes.Single(fix => fix.Stage is not null).WatchOut);
    }

    [Fact]
    public void light_more_lamps_where_a_step_left_some_dark()
    {
        var full = SampleBench.Study.Verdict().Now!.Daily.MolesPerSquareMetre;
        var study = SampleBench.Study.WithStage(stage => stage with { LitStep = SampleBench.Half, Target = SampleBench.Target(0.4 * full) });
        var step = study.Verdict().Fixes.Single(fix => fix.Stage?.LitStep is not null);
        Assert.Equal("", step.Stage!.LitStep);
        // Half of 0.3 kW more through 5,840 h.
        Assert.Equal(876, step.ExtraKilowattHours, 1e-6);
    }

    // 0.95 of the light now: the same tubes give 1 when new and 0.7 at the end, the strong ones 1.25 and 0.875; nothing keeps it to the end within 20 h and 20 cm but lower lamps.
    [Fact]
    public void that_keep_it_at_first_come_last_and_say_so()
    {
        var fixes = Wanting(0.95).Verdict().Fixes;
        Assert.Equal(["same", "strong"], fixes.Where(fix => fix.WatchOut.StartsWith("Enough when new", StringComparison.Ordinal)).Select(fix => fix.Product).OfType<string>().Where(id => id != "bar"));
        Assert.DoesNotContain(fixes.SkipWhile(fix => !fix.WatchOut.StartsWith("Enough when new", StringComparison.Ordinal)), fix => !fix.WatchOut.StartsWith("Enough when new", StringComparison.Ordinal));
    }

    // At most 0.8 of the light now is wanted: the tubes that give 1 and 1.25 of it are left out while others do.
    [Fact]
    public void give_no_more_than_the_crop_wants_where_there_is_a_choice()
    {
        var now = SampleBench.Study.Verdict().Now!.Daily.MolesPerSquareMetre;
        var fixes = Wanting(0.54, target => target with { MostDaily = DailyLight.FromMolesPerSquareMetre(0.8 * now) }).Verdict().Fixes;
        Assert.DoesNotContain(fixes, fix => fix.Product is "same" or "strong");
        Assert.NotEmpty(fixes);
    }

    [Fact]
    public void are_not_offered_where_nothing_is_lost() => Assert.Empty(Wanting(0.4).Verdict().Fixes);

    // Parts of another product cost what the catalogue says, not what was offered for the first.
    [Fact]
    public void leave_the_price_of_exchanged_parts_to_the_catalogue()
    {
        var study = Wanting(0.6).With(new LineMeasure("bench", new DirectWire("weak")) { PartsPerLuminaire = Money.FromUnits(5), LabourPerLuminaire = OperatingTime.FromHours(1) });
        var fixes = study.Verdict().Fixes;
        var changed = LightFixes.Apply(study, "tubes", "bench", fixes.Single(fix => fix.Product == "same")).Options[0].Measures.Single();
        Assert.Equal((null, 1.0), (changed.PartsPerLuminaire, changed.LabourPerLuminaire!.Value.Hours));
        var lower = LightFixes.Apply(study, "tubes", "bench", fixes.Single(fix => fix.Height is not null)).Options[0].Measures.Single();
        Assert.Equal(5.0, lower.PartsPerLuminaire!.Value.Units);
    }
}
