using NodaTime;
using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Tests.Operation;

/// <summary>New York 2027: clocks go forward at 02:00 on 14 March and back at 02:00 on 7 November (IANA time zone data).</summary>
public class Lit_hours_when_the_clocks_change
{
    private static readonly SiteYear Year = new("America/New_York", 2027);

    [Theory]
    [InlineData(3, 13, ClockRule.FollowsClock, 15)] // 18:00 to 10:00 over the short night
    [InlineData(11, 6, ClockRule.FollowsClock, 17)] // over the long night
    [InlineData(3, 13, ClockRule.CountsHours, 16)]
    [InlineData(11, 6, ClockRule.CountsHours, 16)]
    [InlineData(6, 1, ClockRule.FollowsClock, 16)]
    public void are_those_of_the_controller(int month, int day, ClockRule rule, double hours)
    {
        var spell = Spells(new(18, 0), new(10, 0), rule).Single(s => Year.WallTime(s.Start).Date == new LocalDate(2027, month, day));
        Assert.Equal(hours, spell.Hours);
    }

    // 365 nights of 16 h; the spell of 31 December runs to New Year only, and that of the year before brings its last 10 h.
    [Theory, InlineData(ClockRule.FollowsClock), InlineData(ClockRule.CountsHours)]
    public void make_the_same_year_for_both_controllers(ClockRule rule) =>
        Assert.Equal(365 * 16, Spells(new(18, 0), new(10, 0), rule).Sum(spell => spell.Hours));

    [Theory, InlineData(ClockRule.FollowsClock), InlineData(ClockRule.CountsHours)]
    public void fill_the_year_where_on_and_off_are_the_same(ClockRule rule)
    {
        var operation = new AreaOperation(Area(new(6, 0), new(6, 0), rule), Year);
        Assert.Equal(8760, operation.Hours.Hours);
        Assert.Equal(0, operation.Starts);
        Assert.Equal(8760, operation.LineOperation(1).HoursPerStart);
    }

    // On at 02:30, which does not exist on 14 March: shifted to 03:30, an hour later off at 04:30.
    [Fact]
    public void begin_later_by_the_gap_where_the_wall_time_does_not_exist()
    {
        var spell = Spells(new(2, 30), new(4, 30), ClockRule.FollowsClock).Single(s => Year.WallTime(s.Start).Date == new LocalDate(2027, 3, 14));
        Assert.Equal(new LocalTime(3, 30), Year.WallTime(spell.Start).TimeOfDay);
        Assert.Equal(1, spell.Hours);
    }

    // On at 01:30, which occurs twice on 7 November: the first, so 01:30 to 04:30 is four hours.
    [Fact]
    public void begin_at_the_first_where_the_wall_time_occurs_twice() =>
        Assert.Equal(4, Spells(new(1, 30), new(4, 30), ClockRule.FollowsClock).Single(s => Year.WallTime(s.Start).Date == new LocalDate(2027, 11, 7)).Hours);

    [Theory, InlineData(3, 14, 1380), InlineData(11, 7, 1500), InlineData(5, 1, 1440)]
    public void are_told_truly_on_the_year_strip(int month, int day, double minutes)
    {
        var study = Samples.SampleStudy.Small with { Areas = [Area(new(6, 0), new(6, 0), ClockRule.FollowsClock)] };
        Assert.Equal(minutes, OperationCalendar.Of(study, "a").Single(d => d.Date == new LocalDate(2027, month, day)).LitMinutes);
    }

    private static IReadOnlyList<LitSpell> Spells(LocalTime on, LocalTime off, ClockRule rule) => LitSpells.Of(Area(on, off, rule), Year);

    private static Area Area(LocalTime on, LocalTime off, ClockRule rule) => new()
    {
        Id = "a", Name = "A", GrowsCrop = true,
        Seasons = [new() { Name = "S", Start = new(1, 1), End = new(12, 31), Stages = [new() { Name = "T", LightsOn = on, LightsOff = off, ClockRule = rule }] }],
    };
}
