using RetrofitCalc.Engine.Lifetimes;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Examples;
using RetrofitCalc.Engine.Uncertainty;

namespace RetrofitCalc.Engine.Tests.Lifetimes;

/// <summary>
/// Instant start at 12 h: rated 30,000 h; mean light 0.88 at 40 % of the 24,000 h at 3 h per start. So the light is 0.88^((t − 100)/9,500):
/// 80 % at 100 + 9,500 · ln 0.80/ln 0.88 = 16,683 h. Lit 4,380 h a year.
/// </summary>
public class Relamping_by_light
{
    private static readonly Assumptions ByLight = new() { RelampPolicy = RelampPolicy.Light, StudyYears = 10 };
    private static readonly FittedLine Lamps = SmallRoom.Fitted with { Fitting = SmallRoom.Fitting with { Lamp = SmallRoom.Lamp with { MeanOverInitial = 0.88 } } };

    [Fact]
    public void rings_when_light_has_fallen_to_the_share()
    {
        var lamp = Of(Lamps, ByLight)[0];
        Assert.Equal(16_683, lamp.Life.Hours, 0.5);
        Assert.Equal(16_683 / 4_380.0, lamp.Interval!.Value, 1e-3); // 3.81 years
        Assert.Contains("Changed together after 16\u00A0683 h, when their light has fallen to 80 % of that when new.", lamp.Basis);
    }

    [Fact]
    public void rings_earlier_for_a_higher_share() =>
        Assert.Equal(100 + 9_500 * Math.Log(0.9) / Math.Log(0.88), Of(Lamps, ByLight with { LightRelampShare = 0.9 })[0].Life.Hours, 1e-6); // 7,930 h

    [Fact]
    public void never_waits_beyond_rated_life()
    {
        var lamp = Of(Lamps, ByLight with { LightRelampShare = 0.5 })[0]; // 51,612 h by light
        Assert.Equal(30_000, lamp.Life.Hours);
        Assert.Contains("Changed together then: their light has not fallen to 50 % before.", lamp.Basis);
    }

    [Fact]
    public void counts_the_hours_burned() =>
        Assert.Equal((16_683 - 7_923) / 4_380.0, Of(Lamps with { Line = SmallRoom.Line with { BurnHours = SmallRoom.Hours(7_923) } }, ByLight)[0].FirstDue!.Value, 1e-3); // 2 years

    // 0.7^(t/50,000): 80 % at 50,000 · ln 0.8/ln 0.7 = 31,281 h.
    [Fact]
    public void holds_tubes_to_the_same_share()
    {
        var tube = Of(Lamps with { Fitting = new TubeFitting(SmallRoom.Tube, 2) }, ByLight).Single();
        Assert.Equal(31_281, tube.Life.Hours, 0.5);
        Assert.Contains("after 31\u00A0281 h", tube.Basis);
    }

    [Fact]
    public void holds_luminaires_to_it_within_the_life_their_test_bears_out()
    {
        var luminaire = Of(Lamps with { Fitting = new LuminaireFitting(SmallRoom.Luminaire) }, ByLight).Single();
        Assert.Equal(54_000 * Math.Log(0.8) / Math.Log(0.7), luminaire.Life.Hours, 1e-6); // 33,783 h
    }

    [Fact]
    public void leaves_ballasts_alone() => Assert.Equal(50_000, Of(Lamps, ByLight)[1].Life.Hours);

    [Fact]
    public void stretches_with_the_uncertain_lives() =>
        Assert.Equal(16_683 * 1.25, WearClocks.Of(Lamps, SmallRoom.Operation, ByLight, new() { FluorescentLife = 1.25 })[0].Life.Hours, 1);

    [Fact]
    public void comes_round_on_the_calendar_at_the_cost_of_a_group()
    {
        var events = ReplacementCalendar.Of(Lamps, [Of(Lamps, ByLight)[0]], ByLight, null);
        Assert.Equal([3.81, 7.62], events.Select(e => Math.Round(e.YearsFromStart, 2)));
        Assert.All(events, e => Assert.Equal(20 * 6, e.Cost.Units, 1e-9)); // 3 part + 1 recycling + 3 min at 40 an hour (2)
    }

    private static IReadOnlyList<WearClock> Of(FittedLine fitted, Assumptions assumptions) => WearClocks.Of(fitted, SmallRoom.Operation, assumptions, Perturbation.None);
}
