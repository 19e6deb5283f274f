using RetrofitCalc.Engine;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Spectra;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Crops;
using RetrofitCalc.Files.Examples;
using RetrofitCalc.Files.Safety;
using RetrofitCalc.Files.Spectra;

namespace RetrofitCalc.Files.Tests.Examples;

/// <summary>All values are invented; what is checked is that they hang together.</summary>
public class Invented_readings_of_light
{
    private static readonly Study Example = WorkedExample.Load();

    private static Area AreaOf(string id) => Example.Areas.Single(area => area.Id == id);

    private static AreaLight LightOf(string area) => AreaOf(area).Light!;

    private static IEnumerable<double> Values(ReadingSet set) => set.Values.SelectMany(row => row).OfType<double>();

    [Fact]
    public void say_that_they_are_invented_and_from_which_seed()
    {
        var sets = Example.Areas.SelectMany(area => area.Light?.Readings ?? []).ToList();
        Assert.Equal(4, sets.Count);
        Assert.All(sets, set => Assert.Equal("Invented readings, generated from seed 20261005.", set.Note));
        Assert.Empty(StudyEvaluation.Check(Example));
    }

    [Fact]
    public void are_the_same_every_time() => Assert.Equal(
        LightOf("leafy-greens").Readings.SelectMany(Values), WorkedExample.Load().Areas.Single(area => area.Id == "leafy-greens").Light!.Readings.SelectMany(Values));

    [Fact]
    public void show_three_patterns_two_units_and_two_heights()
    {
        var sets = Example.Areas.SelectMany(area => area.Light?.Readings ?? []).ToList();
        Assert.Equal([ReadingPattern.CellCentres, ReadingPattern.Crossings, ReadingPattern.Quadrant], sets.Select(set => set.Pattern).Distinct().Order());
        Assert.Equal([LightUnit.Micromoles, LightUnit.Lux], sets.Select(set => set.Unit).Distinct().Order());
        Assert.Equal([0.3048, 0.4064], LightOf("leafy-greens").Readings.Select(set => set.Height.Metres));
        Assert.Equal(74, LightOf("cuttings-bench").Readings[0].Conversion!.LuxPerMicromole);
    }

    /// <summary>No bench can receive more than its lamps send out: six F25T8 of 28.1 µmol/s on ballasts of factor 0.88 send out 148.4 µmol/s when new.</summary>
    [Fact]
    public void are_less_than_all_lamps_send_out()
    {
        var light = LightOf("leafy-greens");
        var received = light.Readings.Select(set => Values(set).Average() * light.BenchLength!.Value.Metres * light.BenchWidth!.Value.Metres).ToList();
        Assert.InRange(received[0], 30, 6 * 28.1 * 0.88);
        Assert.True(received[1] < received[0], "farther from the lamps less light falls on the bench");
    }

    /// <summary>The layout is the same to the left and right, and the meter reads within 3 %: twins differ by 6 % at most, but for the shaded one.</summary>
    [Fact]
    public void differ_from_their_mirror_images_by_no_more_than_the_meter_may()
    {
        foreach (var (set, row) in LightOf("leafy-greens").Readings.SelectMany(set => set.Values.Index().Select(row => (set, row))))
            for (var column = 0; column < row.Item.Count / 2; column++)
                if (!(set.Id == "greens-tray" && row.Index == 2 && (column == 4 || column == row.Item.Count - 1 - 4)))
                    Assert.InRange(row.Item[column]!.Value / row.Item[^(column + 1)]!.Value, 0.97 / 1.03 - 0.01, 1.03 / 0.97 + 0.01);
    }

    [Fact]
    public void hold_one_taken_in_the_shade_of_a_hand_and_one_blank()
    {
        var tray = LightOf("leafy-greens").Readings[1];
        Assert.True(tray.Values[2][4] < 0.7 * tray.Values[2][3]);
        Assert.Single(Example.Areas.SelectMany(area => area.Light?.Readings ?? []).SelectMany(set => set.Values).SelectMany(row => row), value => value is null);
    }

    [Fact]
    public void leave_the_seedling_racks_unread_though_their_bench_is_drawn()
    {
        var light = LightOf("seedling-racks");
        Assert.Empty(light.Readings);
        Assert.NotEmpty(light.Layout);
        Assert.NotNull(light.BenchLength);
    }

    [Fact]
    public void stand_against_targets_taken_from_the_crop_table_as_they_are()
    {
        var targets = Example.Areas.SelectMany(area => area.Seasons).SelectMany(season => season.Stages).Select(stage => stage.Target).OfType<LightTarget>().ToList();
        Assert.All(targets, target => Assert.Equal(CropTargets.Find(target.Crop), target));
        Assert.Equal(4, targets.Select(target => target.Crop).Distinct().Count());
        Assert.Contains(targets, target => target.WeakSource);
    }

    [Fact]
    public void go_with_light_for_people_and_light_that_strays()
    {
        Assert.Equal(["packing-hall", "corridors", "potting-room"], Example.Areas.Where(area => area.Light?.People is not null).Select(area => area.Id));
        var stray = Assert.Single(Example.Areas.SelectMany(area => area.Light?.Stray ?? []));
        Assert.Contains(Example.Areas, area => area.Id == stray.Onto && area.GrowsCrop);
    }

    /// <summary>The rack bar gives 204 µmol/s; its invented file and its invented spectrum must say the same: lumens of the one over lux per µmol of the other.</summary>
    [Fact]
    public void go_with_a_photometric_file_and_a_spectrum_that_agree_with_the_catalogue()
    {
        var file = Assert.Single(Example.Distributions);
        var flux = new LuminousIntensityDistribution(file.Type, file.Vertical, file.Horizontal, file.Candelas).TotalFlux;
        var factor = SpectrumFigures.Of(StudySpectra.Of(Assert.Single(Example.Spectra)), ShippedSpectra.Tables).Lux!;
        Assert.Equal(Example.Catalogue.Luminaires.Single(luminaire => luminaire.Id == "lum-4ft-rack-bar-120").PhotonFlux!.Value.MicromolesPerSecond, factor.ToPhotonFlux(flux).MicromolesPerSecond, 2.0);
        Assert.All([file.Source, Example.Spectra[0].Source], source => Assert.Equal(EvidenceKind.Invented, source.Kind));
    }

    /// <summary>
    /// Two tubes of 26.1 µmol/s in place of three lamps leave the greens short; a third would do, 14 W in each of forty luminaires. Nobody has
    /// read the seedling racks, and the mist bench is left alone.
    /// </summary>
    [Fact]
    public void show_every_verdict_and_a_way_out_that_costs_few_watts()
    {
        var light = StudyEvaluation.Run(Example, SafetyRuleFile.Load()).Chosen!.Light;
        Assert.Equal(
            [("tissue-culture", LightVerdict.Keeps), ("seedling-racks", LightVerdict.NotKnown), ("leafy-greens", LightVerdict.Loses), ("cuttings-bench", LightVerdict.Unchanged)],
            light.WorstByArea.Select(stage => (stage.Area, stage.Verdict)));
        var greens = light.WorstByArea[2];
        var least = greens.Target!.LeastDaily!.Value.MolesPerSquareMetre;
        Assert.InRange(greens.Now!.Daily.MolesPerSquareMetre, least, 1.5 * least);
        Assert.InRange(greens.After!.Daily.MolesPerSquareMetre, 0.5 * least, least);
        var third = Assert.Single(greens.Fixes, fix => fix.PerLuminaire == 3);
        Assert.Equal(40 * 14, third.ExtraPower.Watts, 1e-6);
    }
}
