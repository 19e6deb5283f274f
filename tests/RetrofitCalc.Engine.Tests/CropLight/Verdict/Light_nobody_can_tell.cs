using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Tests.CropLight.Verdict;

/// <summary>What is missing is asked for; nothing is guessed and nothing breaks.</summary>
public class Light_nobody_can_tell
{
    [Fact]
    public void where_all_readings_are_dark()
    {
        var dark = SampleBench.Study.WithLight(light => light with { Readings = [.. light.Readings.Select(set => set with { Values = [.. set.Values.Select(row => row.Select(_ => (double?)0).ToArray())] })] });
        var stage = dark.Verdict();
        Assert.Equal(0, stage.Now!.Mean.MicromolesPerSquareMetre);
        Assert.Null(stage.Change);
    }

    // Readings of a bench nobody says lamps for: zero light would be a lie.
    [Fact]
    public void where_no_line_is_counted()
    {
        var study = SampleBench.Study;
        var stage = (study with { Lines = [study.Lines[0] with { Count = null }] }).Verdict();
        Assert.Equal((LightVerdict.NotKnown, null, null), (stage.Verdict, stage.Now, stage.After));
        Assert.Contains("Say what hangs in Bench", stage.Ask, StringComparison.Ordinal);
    }

    [Fact]
    public void where_another_line_over_the_bench_is_not_counted()
    {
        var study = SampleBench.Study;
        study = study with { Lines = [study.Lines[0], study.Lines[0] with { Id = "unknown", SetUp = null }] };
        Assert.Equal((LightVerdict.NotKnown, null), (study.WithLight(light => light with { Layout = [] }).Verdict().Verdict, study.WithLight(light => light with { Layout = [] }).Verdict().After));
        // A line of the area that does not hang over the bench does no harm.
        Assert.Equal(LightVerdict.Loses, study.Verdict().Verdict);
    }

    [Fact]
    public void where_a_lamp_has_no_length()
    {
        var study = SampleBench.Study;
        study = study with { Catalogue = study.Catalogue with { Lamps = [SampleBench.Lamp with { Length = default }], Tubes = [SampleBench.Tube("weak", 27) with { Length = default }] } };
        Assert.Contains("length of", study.Verdict().Ask, StringComparison.Ordinal);
    }

    [Fact]
    public void where_lux_was_read_and_nobody_converts_it_but_photons_compare()
    {
        var study = SampleBench.Study.WithLight(light => light with { Readings = [.. light.Readings.Select(set => set with { Unit = LightUnit.Lux })] });
        Assert.Equal((null, -0.25), (study.Verdict().Now, Math.Round(study.Verdict().RatedChange!.Value, 9)));
    }

    // 30 foot-candles of light at 74 lx to the µmol: 30 × 10.764/74 = 4.36 µmol.
    [Fact]
    public void is_told_once_the_unit_is_converted()
    {
        var conversion = new LuxConversion(74, 0.07, new(Engine.Catalogue.EvidenceKind.Computed, "test"));
        var study = SampleBench.Study.WithLight(light => light with
        {
            Layout = [],
            Readings = [SampleBench.Readings("low", 0.4) with { Unit = LightUnit.FootCandles, Conversion = conversion, Values = [[30, 30, 30, 30], [30, 30, 30, 30], [30, 30, 30, 30]] }],
        });
        Assert.Equal(30 * 10.7639104167097 / 74, study.Verdict().Now!.Mean.MicromolesPerSquareMetre, 1e-9);
    }

    // A strip turned level shines past the one reading under its other side: no share of its light explains it.
    [Fact]
    public void where_lamps_are_aimed_away_from_every_reading()
    {
        var study = SampleBench.Study.WithLight(light => light with
        {
            Layout = [new("bench", default) { TiltDegrees = 90, LampSpacing = Length.FromMetres(0) }],
            Readings = [SampleBench.Readings("one", 0.4) with { Columns = [0], Rows = [-0.3], Values = [[50]], Pattern = ReadingPattern.Crossings }],
        });
        Assert.Null(LightMaps.Of(study, "bench", null)?.Fit);
        Assert.NotNull(study.Verdict().RestsOn);
    }

    [Fact]
    public void at_heights_no_reading_reaches()
    {
        var study = SampleBench.Study with { Lines = [SampleBench.Study.Lines[0] with { MountingHeight = Length.FromMetres(2) }] };
        var stage = study.Verdict();
        Assert.Equal((LightVerdict.NotKnown, null, null), (stage.Verdict, stage.Now, stage.After));
        Assert.Contains("200 cm", stage.Ask, StringComparison.Ordinal);
    }
}
