using NodaTime;
using RetrofitCalc.Engine.Lifetimes;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Examples;

namespace RetrofitCalc.Engine.Tests.Lifetimes;

public class Replacements_on_the_calendar
{
    [Fact]
    public void come_round_at_every_interval_within_the_study()
    {
        var events = Of(SmallRoom.Fitted, Clock(WearPart.Lamp, interval: 3, first: 1));
        Assert.Equal([1.0, 4, 7], events.Select(e => e.YearsFromStart));
        Assert.Equal([new(2028, 1, 1), new(2031, 1, 1), new LocalDate(2034, 1, 1)], events.Select(e => e.Due)); // 365, 1,461 and 2,557 days on: 1, 4 and 7 years of 365.25
    }

    [Fact]
    public void leave_out_what_falls_due_on_the_last_day() =>
        Assert.Equal([5.0], Of(SmallRoom.Fitted, Clock(WearPart.Lamp, interval: 5, first: 5)).Select(e => e.YearsFromStart));

    [Theory, InlineData(RelampPolicy.Spot, 14), InlineData(RelampPolicy.Group, 6)]
    public void of_lamps_cost_part_labour_and_recycling(RelampPolicy policy, double eachLamp)
    {
        // 20 lamps: 3 part + 1 recycling + 40 an hour for 15 min (10) on call, or 3 min (2) with the room
        var lamps = Of(SmallRoom.Fitted, Clock(WearPart.Lamp, 9, 9), new Assumptions { RelampPolicy = policy }).Single();
        Assert.Equal((20, 20 * eachLamp), (lamps.Count, lamps.Cost.Units));
    }

    [Fact]
    public void of_ballasts_are_the_electrician_s()
    {
        var ballasts = Of(SmallRoom.Fitted, Clock(WearPart.Ballast, 9, 9)).Single();
        Assert.Equal(10, ballasts.Count);
        Assert.Equal(650, ballasts.Cost.Units, 1e-9); // 10 × (20 part + 30 min at 85 + 2.50 recycling)
    }

    [Fact]
    public void of_direct_wire_tubes_are_the_electrician_s_too()
    {
        var fitted = SmallRoom.Fitted with { Fitting = new TubeFitting(SmallRoom.Tube, 2) };
        var costs = new OptionCosts { ElectricianRate = Money.FromUnits(100), DisposalPerLamp = Money.FromUnits(2) };
        var tubes = ReplacementCalendar.Of(fitted, [Clock(WearPart.Tube, 9, 9)], new(), costs).Single();
        Assert.Equal(700, tubes.Cost.Units, 1e-9); // 20 × (8 + 15 min at 100 + 2)
    }

    [Fact]
    public void round_a_fraction_of_a_luminaire_up()
    {
        var fitted = SmallRoom.Fitted with { Fitting = new LuminaireFitting(SmallRoom.Luminaire), Luminaires = 7.5 };
        Assert.Equal(8, Of(fitted, Clock(WearPart.Luminaire, 9, 9)).Single().Count);
    }

    [Fact]
    public void say_when_the_price_of_the_part_is_missing()
    {
        var fitted = SmallRoom.Fitted with { Fitting = SmallRoom.Fitting with { Lamp = SmallRoom.Lamp with { Price = null } } };
        var lamps = Of(fitted, Clock(WearPart.Lamp, 9, 9)).Single();
        Assert.True(lamps.PriceMissing);
        Assert.Equal(220, lamps.Cost.Units, 1e-9); // labour and recycling are known
        Assert.False(Of(SmallRoom.Fitted, Clock(WearPart.Lamp, 9, 9)).Single().PriceMissing);
    }

    [Fact]
    public void are_in_order_of_date_whatever_the_part() =>
        Assert.Equal([2.0, 3, 5, 7, 8, 9], Of(SmallRoom.Fitted, Clock(WearPart.Lamp, 3, 2), Clock(WearPart.Ballast, 2, 3)).Select(e => e.YearsFromStart).Distinct());

    private static WearClock Clock(WearPart part, double interval, double first) => new(part, SmallRoom.Hours(1), interval, first, "");

    private static IReadOnlyList<ReplacementEvent> Of(FittedLine fitted, params WearClock[] clocks) => ReplacementCalendar.Of(fitted, clocks, new(), null);

    private static IReadOnlyList<ReplacementEvent> Of(FittedLine fitted, WearClock clock, Assumptions assumptions) =>
        ReplacementCalendar.Of(fitted, [clock], assumptions, null);
}
