using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Tests.CropLight.Verdict;

/// <summary>E-78 to E-80 with numbers anyone can redo: see <see cref="SampleBench"/>.</summary>
public class Light_a_crop_keeps_or_loses
{
    // 54 µmol/s hang where 72 hung, in the same places, facing down like them: three quarters of every reading.
    [Fact]
    public void follows_the_photons_where_shape_and_places_stay()
    {
        var stage = SampleBench.Study.Verdict();
        Assert.Equal(-0.25, stage.Change!.Value, 1e-9);
        Assert.Equal(-0.25, stage.RatedChange!.Value, 1e-9);
        Assert.Equal(0.75 * stage.Now!.Mean.MicromolesPerSquareMetre, stage.After!.Mean.MicromolesPerSquareMetre, 1e-9);
        Assert.Equal(stage.Now.MinimumToMean!.Value, stage.After.MinimumToMean!.Value, 1e-12);
        Assert.Null(stage.Ask);
    }

    [Fact]
    public void is_read_at_the_height_of_the_crop()
    {
        var light = SampleBench.Closed(0.4, 0.8 * 36, SampleBench.Quadrant, -0.05, 0.05);
        var stage = SampleBench.Study.Verdict();
        Assert.Equal(light.Max(), stage.Now!.Maximum.MicromolesPerSquareMetre, 1e-9);
        Assert.Equal(light.Min(), stage.Now.Minimum.MicromolesPerSquareMetre, 1e-9);
        Assert.Equal(16.0, stage.Photoperiod.Hours);
        Assert.Equal(stage.Now.Mean.MicromolesPerSquareMetre * 16 * 0.0036, stage.Now.Daily.MolesPerSquareMetre, 1e-9);
    }

    // Hung 0.5 m over the crop, between the heights that were read: the model gives what the closed forms give.
    [Fact]
    public void is_known_between_the_heights_that_were_read()
    {
        var study = SampleBench.Study with { Lines = [SampleBench.Study.Lines[0] with { MountingHeight = Length.FromMetres(0.5) }] };
        var light = SampleBench.Closed(0.5, 0.8 * 36, SampleBench.Quadrant, -0.05, 0.05);
        Assert.Equal(light.Max(), study.Verdict().Now!.Maximum.MicromolesPerSquareMetre, 1e-6);
    }

    [Theory]
    [InlineData("weak", 0.0, LightVerdict.Loses)]
    [InlineData("same", 0.0, LightVerdict.Keeps)]
    [InlineData("strong", 0.0, LightVerdict.Keeps)]
    [InlineData("weak", 0.70, LightVerdict.KeepsAtFirst)]
    [InlineData("weak", 0.50, LightVerdict.Keeps)]
    [InlineData("weak", 0.80, LightVerdict.Loses)]
    [InlineData("same", 1.10, LightVerdict.Keeps)]
    [InlineData("strong", 1.10, LightVerdict.KeepsAtFirst)]
    public void depends_on_the_target_as_a_share_of_the_light_now(string tube, double target, LightVerdict verdict)
    {
        var now = SampleBench.Study.Verdict().Now!.Daily.MolesPerSquareMetre;
        var study = SampleBench.Study.With(new DirectWire(tube)).WithStage(stage => stage with { Target = target > 0 ? SampleBench.Target(target * now) : null });
        Assert.Equal(verdict, study.Verdict().Verdict);
    }

    // Tubes keep 0.70 of their light at 50,000 h; 10 years of 5,840 h are the study's end at 58,400 h, so the tubes are due first, after 8.56 years.
    // From 0.75 to 0.60 of the light now: 0.8 = 0.7^(h/50,000), h = 31,281, 5.36 years.
    [Fact]
    public void falls_below_the_target_in_a_year_that_can_be_told()
    {
        var now = SampleBench.Study.Verdict().Now!.Daily.MolesPerSquareMetre;
        var stage = SampleBench.Study.WithStage(stage => stage with { Target = SampleBench.Target(0.6 * now) }).Verdict();
        Assert.Equal(Math.Log(0.8) / Math.Log(0.7) * 50_000 / (16 * 365), stage.BelowTargetAfterYears!.Value, 1e-4);
        Assert.Equal(0.75 * 0.7, stage.AtEnd!.Mean / stage.Now!.Mean, 1e-9);
    }

    [Fact]
    public void is_warned_about_where_it_is_below_the_target_already()
    {
        var now = SampleBench.Study.Verdict().Now!.Daily.MolesPerSquareMetre;
        var study = SampleBench.Study.With(new DirectWire("same")).WithStage(stage => stage with { Target = SampleBench.Target(1.1 * now) });
        Assert.Contains(study.Verdict().Warnings, warning => warning.Contains("below the target for Invented crop today", StringComparison.Ordinal));
    }

    // Output of tube and lamp, tested: 5 % each; how the tube spreads its light: 10 %. Lamps new, no dirt, air known, the model meets the readings.
    [Fact]
    public void is_as_uncertain_as_its_parts_together()
    {
        var stage = SampleBench.Study.Verdict();
        Assert.Equal(0.75 * Math.Sqrt(0.05 * 0.05 + 0.05 * 0.05 + 0.1 * 0.1), stage.ChangeUncertainty!.Value, 1e-6);
        Assert.Equal([0.10, 0.05, 0.05], stage.UncertainBy.Where(part => part.Share > 1e-6).Select(part => Math.Round(part.Share, 6)));
    }

    // 36 µmol/s now: 32.4 are 10 % less, 35 are 3 %. However wide the doubt, a fall that is likely is not called kept. When they are due, after
    // 30,000 h, the lamps give 0.9^(29,900/9,500) = 0.718 of their light, tubes 0.7: 35 by then are 0.7 · 35/(0.718 · 36) = 0.948 of it, 35.3 are 0.956.
    [Theory]
    [InlineData(27, LightVerdict.Loses)]
    [InlineData(32.4, LightVerdict.Loses)]
    [InlineData(35, LightVerdict.KeepsAtFirst)]
    [InlineData(35.3, LightVerdict.Keeps)]
    public void without_a_target_is_lost_by_a_fall_of_more_than_5_percent(double micromoles, LightVerdict verdict)
    {
        var study = SampleBench.Study.With(new DirectWire("other"));
        study = study with { Catalogue = study.Catalogue with { Tubes = [SampleBench.Tube("other", micromoles)] } };
        Assert.Equal(verdict, study.Verdict().Verdict);
    }

    // Lamps of 0.9 at 9,600 h that are never let fall lower: changed at 40 % of their life. Tubes that begin with the same light end at 0.7, 22 % below.
    [Fact]
    public void without_a_target_is_held_against_the_present_lamps_when_they_are_due()
    {
        var study = SampleBench.Study.With(new DirectWire("same"));
        var stage = (study with { Catalogue = study.Catalogue with { Lamps = [SampleBench.Lamp with { Lives = [new(3, null, OperatingTime.FromHours(9_600))], MeanOverInitial = 0.97 }] } }).Verdict();
        var due = Math.Pow(0.97, (9_600 - 100) / (0.4 * 9_600 - 100));
        Assert.Equal((LightVerdict.KeepsAtFirst, 0.0), (stage.Verdict, Math.Round(stage.Change!.Value, 9)));
        Assert.Equal(due, stage.NowAtEnd!.Mean / stage.Now!.Mean, 1e-9);
        Assert.Equal(0.7 / due, stage.AtEnd!.Daily.MolesPerSquareMetre / stage.NowAtEnd.Daily.MolesPerSquareMetre, 1e-9);
        Assert.All(stage.Fixes, fix => Assert.True(fix.Light.Mean > stage.After!.Mean || fix.Stage is not null));
        Assert.NotEmpty(stage.Fixes);
    }

    [Fact]
    public void is_unchanged_where_nothing_is_done()
    {
        var stage = SampleBench.Study.With(new KeepAsIs()).Verdict();
        Assert.Equal((LightVerdict.Unchanged, 0.0, 0.0, 0.0), (stage.Verdict, stage.Change, stage.ChangeUncertainty, stage.RatedChange));
        Assert.Equal(stage.Now, stage.After);
    }

    // Lamps of 30,000 h at 16 h a start and mean light 0.9 at 40 % of the life tested at 3 h: their light still falls, and is compared with the target.
    [Fact]
    public void is_compared_with_the_target_even_where_nothing_is_done()
    {
        var now = SampleBench.Study.Verdict().Now!.Daily.MolesPerSquareMetre;
        var stage = SampleBench.Study.With(new KeepAsIs()).WithStage(each => each with { Target = SampleBench.Target(0.95 * now) }).Verdict();
        Assert.Equal(LightVerdict.Unchanged, stage.Verdict);
        Assert.InRange(stage.BelowTargetAfterYears!.Value, 0.5, 1.5);
        Assert.True(stage.AtEnd!.Mean < stage.Now!.Mean);
    }

    // The lamps have burned to 0.9 of their light; the readings show 80 % of what is left of it, so 0.8/0.9 of the rated light meets the crop.
    [Fact]
    public void counts_the_wear_of_the_present_lamps_for_the_tubes()
    {
        var worn = OperatingTime.FromHours(0.4 * 24_000);
        var study = SampleBench.Study with { Lines = [SampleBench.Study.Lines[0] with { BurnHours = worn }] };
        Assert.Equal(0.75 / 0.9 - 1, study.Verdict().Change!.Value, 1e-9);
    }

    // Half of the fall of 0.1, as a share of the 0.9 that are left.
    [Fact]
    public void is_in_doubt_by_half_of_what_the_lamps_are_said_to_have_lost()
    {
        var study = SampleBench.Study with { Lines = [SampleBench.Study.Lines[0] with { BurnHours = OperatingTime.FromHours(0.4 * 24_000) }] };
        Assert.Contains(study.Verdict().UncertainBy, part => part.Name.Contains("fading", StringComparison.Ordinal) && Math.Abs(part.Share - 0.05 / 0.9) < 1e-9);
    }

    // One of two lamps lit, nobody has laid out the luminaires: half of the light, 15 % either way.
    [Fact]
    public void is_in_doubt_under_another_step_without_a_layout()
    {
        var study = SampleBench.Study.WithLight(light => light with { Layout = [] });
        var stage = study.With(new KeepAsIs(), new StageChange("bench", "Year", "Growing") { LitStep = SampleBench.Half }).Verdict();
        Assert.Equal((-0.5, 0.5 * 0.15), (Math.Round(stage.Change!.Value, 9), Math.Round(stage.ChangeUncertainty!.Value, 9)));
    }

    [Theory]
    [InlineData(true, false)]
    [InlineData(false, true)]
    public void is_in_doubt_at_another_height_where_one_was_read(bool both, bool doubted)
    {
        var study = SampleBench.Study.WithLight(light => both ? light : light with { Readings = [light.Readings[0]] });
        var stage = study.With(new LineMeasure("bench", new DirectWire("weak")) { Height = Length.FromMetres(0.3) }).Verdict();
        Assert.Equal(doubted, stage.UncertainBy.Any(part => part.Share == 0.10 && part.Name.Contains("one height only", StringComparison.Ordinal)));
    }

    // A bar of 72 µmol/s sends out all it is rated for, 1/0.8 of what the readings find of the old lamps' 72, from one line in the middle.
    [Fact]
    public void does_not_lose_in_a_new_body_what_the_old_one_kept()
    {
        var stage = SampleBench.Study.With(new ReplaceLuminaire("bar")).Verdict();
        Assert.Equal(SampleBench.Closed(0.4, 72, SampleBench.Quadrant, 0).Max(), stage.After!.Maximum.MicromolesPerSquareMetre, 1e-6);
        Assert.Contains(stage.UncertainBy, part => Math.Abs(part.Share - 0.2) < 1e-6 && part.Name.Contains("rated", StringComparison.Ordinal));
        Assert.Contains(stage.UncertainBy, part => Math.Abs(part.Share - 0.05) < 1e-6 && part.Name.Contains("meter", StringComparison.Ordinal));
    }

    // Four readings each under one of two lamps, everything else the same: half the photons at the lamp's own place.
    [Fact]
    public void counts_for_a_stage_by_the_lamps_lit_in_it()
    {
        var study = SampleBench.Study.With(new DirectWire("same")).WithStage(stage => stage with { LitStep = SampleBench.Half });
        var stage = study.Verdict();
        Assert.Equal(SampleBench.Closed(0.4, 0.8 * 36, SampleBench.Quadrant, -0.05).Max(), stage.Now!.Maximum.MicromolesPerSquareMetre, 1e-6);
        Assert.Equal(0, stage.Change!.Value, 1e-9);
    }

    [Fact]
    public void is_read_under_a_step_and_told_for_all_lamps()
    {
        var study = SampleBench.Study.WithLight(light => light with { Readings = [SampleBench.Readings("low", 0.4, SampleBench.Half), SampleBench.Readings("high", 0.6, SampleBench.Half)] });
        Assert.Equal(SampleBench.Study.Verdict().Now!.Mean.MicromolesPerSquareMetre, study.Verdict().Now!.Mean.MicromolesPerSquareMetre, 1e-6);
    }

    // The weak tubes at 0.3 m, three quarters of the measured 0.4: what the closed forms give there for 54 of 72 µmol/s.
    [Fact]
    public void is_told_at_the_height_the_option_hangs_lamps()
    {
        var stage = SampleBench.Study.With(new LineMeasure("bench", new DirectWire("weak")) { Height = Length.FromMetres(0.3) }).Verdict();
        Assert.Equal(SampleBench.Closed(0.3, 0.8 * 27, SampleBench.Quadrant, -0.05, 0.05).Max(), stage.After!.Maximum.MicromolesPerSquareMetre, 1e-6);
    }

    [Fact]
    public void is_not_guessed_beyond_half_of_the_heights_read()
    {
        var stage = SampleBench.Study.With(new LineMeasure("bench", new DirectWire("weak")) { Height = Length.FromMetres(0.15) }).Verdict();
        Assert.Equal((LightVerdict.NotKnown, null), (stage.Verdict, stage.After));
        Assert.Contains("15 cm", stage.Ask, StringComparison.Ordinal);
        Assert.NotNull(stage.Now);
    }

    // 14 h instead of 16 h of the same light: an eighth less of a day, by the schedule of the option.
    [Fact]
    public void is_that_of_the_day_where_an_option_changes_hours()
    {
        var stage = SampleBench.Study.With(new DirectWire("same"), new StageChange("bench", "Year", "Growing") { LightsOff = new(20, 0) }).Verdict();
        Assert.Equal(14.0 / 16 - 1, stage.Change!.Value, 1e-9);
        Assert.Equal(14.0 / 16 - 1, stage.RatedChange!.Value, 1e-9);
        Assert.Equal(14.0, stage.Photoperiod.Hours);
    }

    [Fact]
    public void follows_the_photons_without_a_layout_and_says_so()
    {
        var stage = SampleBench.Study.WithLight(light => light with { Layout = [] }).Verdict();
        Assert.Equal(-0.25, stage.Change!.Value, 1e-9);
        Assert.Contains("nobody has laid out the luminaires", stage.RestsOn, StringComparison.Ordinal);
        Assert.Contains(stage.UncertainBy, part => part.Share == 0.15);
        Assert.True(stage.ChangeUncertainty > SampleBench.Study.Verdict().ChangeUncertainty);
    }

    [Fact]
    public void is_not_known_without_readings_but_the_photons_are()
    {
        var stage = SampleBench.Study.WithArea(area => area with { Light = null }).Verdict();
        Assert.Equal((LightVerdict.NotKnown, null, null), (stage.Verdict, stage.Now, stage.Change));
        Assert.Equal(-0.25, stage.RatedChange!.Value, 1e-9);
        Assert.Contains("Read the light in Bench", stage.Ask, StringComparison.Ordinal);
    }

    [Fact]
    public void asks_for_outputs_nobody_knows()
    {
        var study = SampleBench.Study;
        study = study with { Catalogue = study.Catalogue with { Tubes = [SampleBench.Tube("weak", 27) with { PhotonFlux = null }] } };
        var stage = study.Verdict();
        Assert.Equal((LightVerdict.NotKnown, null, null), (stage.Verdict, stage.After, stage.RatedChange));
        Assert.Contains("Tube weak", stage.Ask, StringComparison.Ordinal);
        Assert.NotNull(stage.Now);
    }

    [Fact]
    public void asks_what_the_lux_of_readings_mean()
    {
        var study = SampleBench.Study.WithLight(light => light with { Readings = [.. light.Readings.Select(set => set with { Unit = LightUnit.Lux })] });
        Assert.Contains("lux", study.Verdict().Ask, StringComparison.Ordinal);
    }

    [Fact]
    public void is_unchanged_as_it_is()
    {
        var result = StudyEvaluation.Run(SampleBench.Study, new());
        Assert.Equal(LightVerdict.Unchanged, result.Light.Stages[0].Verdict);
        var unread = StudyEvaluation.Run(SampleBench.Study.WithArea(area => area with { Light = null }), new());
        Assert.Equal(LightVerdict.NotKnown, unread.Light.Stages[0].Verdict);
    }
}
