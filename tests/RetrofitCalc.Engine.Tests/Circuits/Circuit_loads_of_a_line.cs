using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Circuits;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Samples;

namespace RetrofitCalc.Engine.Tests.Circuits;

/// <summary>Current = W / (V · power factor); continuous loads count 125 % (NEC 210.19, 210.20, read in summaries).</summary>
public class Circuit_loads_of_a_line
{
    private static CircuitLoad Racks(Func<SurveyLine, SurveyLine> change, DirectWireTube? tube = null)
    {
        var study = SampleStudy.Small with
        {
            Lines = [change(SampleStudy.Small.Lines[0])],
            Options = [SampleStudy.TubesEverywhere with { Measures = [SampleStudy.TubesEverywhere.Measures[0]] }],
            Catalogue = SampleCatalogue.All with { Tubes = [tube ?? SampleCatalogue.TubeT8] },
        };
        var result = StudyEvaluation.Run(study, new());
        return Assert.Single(CircuitLoads.Of(result, result.Options[0]));
    }

    // 40 luminaires of two 15 W tubes, power factor 0.95, at 120 V: 30 / 114 = 0.263 A each, 10.53 A in all, 13.16 A at 125 %; 16 / 0.263 = 60.8.
    [Fact]
    public void use_the_power_factor_of_what_is_fitted()
    {
        var after = Racks(line => line with { SupplyVolts = 120 }, SampleCatalogue.TubeT8 with { PowerFactor = 0.95 }).After!;
        Assert.Equal(0.95, after.PowerFactor);
        Assert.Equal(10.526, after.Amperes, 0.001);
        Assert.Equal(13.158, after.LeastRating, 0.001);
        Assert.Equal(60, after.MostOnOneCircuit);
    }

    [Fact]
    public void take_the_power_factor_from_distortion_where_the_sheet_gives_that_alone() =>
        Assert.Equal(0.9806, Racks(line => line with { SupplyVolts = 120 }, SampleCatalogue.TubeT8 with { HarmonicDistortionPercent = 20 }).After!.PowerFactor!.Value, 0.0001);

    // 60 W and 0.55 A read at 120 V: 60 / 66 = 0.909.
    [Fact]
    public void take_the_present_power_factor_from_a_reading()
    {
        var now = Racks(line => line with { SupplyVolts = 120, Reading = new(Power.FromWatts(60), new(2026, 5, 1)) { Amperes = 0.55 } }).Now!;
        Assert.Equal(0.9091, now.PowerFactor!.Value, 0.0001);
        Assert.Equal(0.55, now.AmperesEach, 1e-9);
    }

    [Fact]
    public void are_the_least_possible_while_the_power_factor_is_not_known()
    {
        var now = Racks(line => line with { SupplyVolts = 277 }).Now!;
        Assert.Null(now.PowerFactor);
        Assert.Equal(40 * 54.88 / 277, now.Amperes, 0.01);
    }

    [Fact]
    public void are_not_known_without_the_supply_voltage()
    {
        var racks = Racks(line => line);
        Assert.Null(racks.Now);
        Assert.Null(racks.After);
    }

    [Fact]
    public void count_a_whole_luminaire_at_the_very_limit() => Assert.Equal(10, ContinuousLoad.MostLuminaires(1.6, 20));
}
