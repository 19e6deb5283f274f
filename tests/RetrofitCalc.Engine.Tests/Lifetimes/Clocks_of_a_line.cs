using NodaTime;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Lifetimes;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Examples;
using RetrofitCalc.Engine.Uncertainty;

namespace RetrofitCalc.Engine.Tests.Lifetimes;

public class Clocks_of_a_line
{
    private static readonly FittedLine Fitted = SmallRoom.Fitted;

    [Fact]
    public void show_lamps_and_ballasts_side_by_side()
    {
        var clocks = Of(Fitted);
        Assert.Equal([WearPart.Lamp, WearPart.Ballast], clocks.Select(clock => clock.Part));
        Assert.Equal(30_000 / 4_380.0, clocks[0].Interval!.Value, 1e-9);  // 6.85 years
        Assert.Equal(50_000 / 4_380.0, clocks[1].Interval!.Value, 1e-9); // 11.4 years
    }

    [Fact]
    public void shorten_the_lamps_to_the_share_of_group_relamping()
    {
        var lamp = Of(Fitted, new() { RelampPolicy = RelampPolicy.Group })[0];
        Assert.Equal(21_000, lamp.Life.Hours, 1e-9); // 70 % of 30,000 h
        Assert.Contains("70 %", lamp.Basis);
    }

    [Fact]
    public void count_from_the_hours_burned()
    {
        var lamp = Of(With(Fitted.Line with { BurnHours = SmallRoom.Hours(21_240) }))[0];
        Assert.Equal(2, lamp.FirstDue!.Value, 1e-9); // (30,000 − 21,240)/4,380
    }

    [Fact]
    public void prefer_hours_burned_over_the_day_the_lamps_were_fitted()
    {
        var lamp = Of(With(Fitted.Line with { BurnHours = SmallRoom.Hours(21_240), LampsInstalled = new LocalDate(2026, 12, 31) }))[0];
        Assert.Equal(2, lamp.FirstDue!.Value, 1e-9);
    }

    [Fact]
    public void count_from_the_day_the_lamps_were_fitted()
    {
        var lamp = Of(With(Fitted.Line with { LampsInstalled = new LocalDate(2023, 1, 1) }))[0];
        Assert.Equal(30_000 / 4_380.0 - 4, lamp.FirstDue!.Value, 1e-9); // 1,461 days are exactly four years of 365.25
    }

    [Fact]
    public void take_a_ballast_as_fitted_in_the_middle_of_its_year()
    {
        var ballast = Of(With(Fitted.Line with { BallastYear = 2020 }))[1];
        Assert.Equal(50_000 / 4_380.0 - 2_375 / 365.25, ballast.FirstDue!.Value, 1e-9); // 1 July 2020 to 1 January 2027: 2,375 days
    }

    [Fact]
    public void are_due_at_once_when_life_is_already_spent()
    {
        var lamp = Of(With(Fitted.Line with { BurnHours = SmallRoom.Hours(45_260) }))[0];
        Assert.Equal(0, lamp.FirstDue);
    }

    [Fact]
    public void say_so_when_nobody_knows_the_age() => Assert.All(Of(Fitted), clock => Assert.Contains("Nobody has said how old", clock.Basis));

    [Fact]
    public void start_anew_after_renewal()
    {
        var aged = With(Fitted.Line with { BurnHours = SmallRoom.Hours(20_000), BallastYear = 2010 });
        var clocks = Of(aged with { Fitting = SmallRoom.Fitting with { Renewed = true } });
        Assert.All(clocks, clock => Assert.Equal(clock.Interval, clock.FirstDue));
    }

    [Fact]
    public void take_the_start_method_read_on_the_ballast_before_the_catalogue_s() =>
        Assert.Equal(36_000, Of(With(Fitted.Line with { StartMethod = StartMethod.Programmed }))[0].Life.Hours, 1e-9);

    [Fact]
    public void shorten_the_ballast_in_a_hot_area()
    {
        var ballast = Of(Fitted with { Area = SmallRoom.Area with { BallastCaseTemperature = 80 } })[1];
        Assert.Equal(25_000, ballast.Life.Hours, 1e-9);
        Assert.Contains("halved for every 10 °C", ballast.Basis);
    }

    [Fact]
    public void leave_out_a_ballast_nobody_has_looked_at() =>
        Assert.Equal([WearPart.Lamp], Of(Fitted with { Fitting = SmallRoom.Fitting with { Ballasts = [null] } }).Select(clock => clock.Part));

    [Fact]
    public void never_ring_where_the_light_never_burns() =>
        Assert.All(WearClocks.Of(Fitted, new(SmallRoom.Hours(0), 0, 0), new(), Perturbation.None), clock => Assert.Null(clock.FirstDue));

    [Fact]
    public void cap_a_luminaire_at_six_times_its_test_and_say_so()
    {
        var clock = Of(Fitted with { Fitting = new LuminaireFitting(SmallRoom.Luminaire) }).Single();
        Assert.Equal(54_000, clock.Life.Hours); // 6 × 9,000 h, not the 100,000 h claimed
        Assert.Contains("six times the test", clock.Basis);
    }

    [Fact]
    public void stretch_with_the_uncertain_lives()
    {
        var factors = new Perturbation { FluorescentLife = 1.25, ReplacementLife = 0.75 };
        Assert.Equal(37_500, WearClocks.Of(Fitted, SmallRoom.Operation, new(), factors)[0].Life.Hours, 1e-9);
        var tubes = Fitted with { Fitting = new TubeFitting(SmallRoom.Tube, 2) };
        Assert.Equal(37_500, WearClocks.Of(tubes, SmallRoom.Operation, new(), factors)[0].Life.Hours, 1e-9);
    }

    private static FittedLine With(SurveyLine line) => Fitted with { Line = line };

    private static IReadOnlyList<WearClock> Of(FittedLine fitted, Assumptions? assumptions = null) =>
        WearClocks.Of(fitted, SmallRoom.Operation, assumptions ?? new(), Perturbation.None);
}
