using NodaTime;
using RetrofitCalc.Engine;
using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Examples;
using RetrofitCalc.Files.Safety;

namespace RetrofitCalc.Files.Tests.Examples;

/// <summary>All values are invented; what is checked is that they hang together.</summary>
public class An_invented_meter_year
{
    private static readonly Study Example = WorkedExample.Load();
    private static readonly MeterYear Meter = Example.Meter!;

    [Fact]
    public void is_complete_and_says_that_it_is_invented_and_from_which_seed()
    {
        Assert.Equal((35_040, 15, new LocalDate(2026, 1, 1)), (Meter.Watts.Count, Meter.IntervalMinutes, Meter.FirstDay));
        Assert.DoesNotContain(null, Meter.Watts);
        Assert.Contains("(invented)", Meter.Name);
        Assert.Equal(EvidenceKind.Invented, Meter.Source.Kind);
        Assert.Contains("seed 20260115", Meter.Source.Source);
    }

    [Fact]
    public void is_the_same_every_time() => Assert.Equal(Meter.Watts, WorkedExample.Load().Meter!.Watts);

    [Fact]
    public void is_never_below_the_lighting_it_holds()
    {
        var comparison = StudyEvaluation.Run(Example, SafetyRuleFile.Load()).Meter!;
        Assert.Equal(0, comparison.IntervalsExceeded);
        Assert.InRange(comparison.LightingShare, 0.2, 0.5);
    }

    /// <summary>The least rest is 12 kW, and readings go up in steps of 10 W.</summary>
    [Fact]
    public void holds_the_lighting_of_every_interval_and_at_least_twelve_kilowatts_besides()
    {
        var lighting = PresentLoad.Watts(Example, Meter.FirstDay, 15);
        Assert.All(Meter.Watts.Zip(lighting), pair => Assert.InRange(pair.First!.Value - pair.Second, 12_000, 80_000));
        Assert.All(Meter.Watts, watts => Assert.Equal(0, watts!.Value % 10));
    }

    /// <summary>Corridors and packing hall: 10 March 2026 is a Tuesday, 7:00 the hall's lights come on, 60 F96T12 lamps and more.</summary>
    [Fact]
    public void shows_the_lights_come_on_as_a_step()
    {
        var lighting = PresentLoad.Watts(Example, new LocalDate(2026, 3, 1), 15);
        var seven = 9 * 96 + 28 - 4; // two days after the clocks went forward, an hour is missing before
        Assert.True(lighting[seven] - lighting[seven - 1] > 3_000);
    }
}
