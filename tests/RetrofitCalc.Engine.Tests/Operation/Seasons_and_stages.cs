using NodaTime;
using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Samples;

namespace RetrofitCalc.Engine.Tests.Operation;

public class Seasons_and_stages
{
    private static readonly IReadOnlyList<CalendarDay> Room = OperationCalendar.Of(SampleStudy.Small, "room");
    private static readonly IReadOnlyList<CalendarDay> Hall = OperationCalendar.Of(SampleStudy.Small, "hall");

    // The winter crop starts on 1 November with 20 days of rooting: 1 to 20 November.
    [Theory]
    [InlineData(11, 1, "Winter crop", "Rooting"), InlineData(11, 20, "Winter crop", "Rooting"), InlineData(11, 21, "Winter crop", "Growing")]
    [InlineData(1, 1, "Winter crop", "Growing"), InlineData(3, 31, "Winter crop", "Growing"), InlineData(4, 1, null, null)]
    [InlineData(5, 10, "Summer crop", "All"), InlineData(8, 20, "Summer crop", "All"), InlineData(8, 21, null, null)]
    public void follow_each_other_over_New_Year(int month, int day, string? season, string? stage)
    {
        var found = Room.Single(d => d.Date == new LocalDate(2027, month, day));
        Assert.Equal((season, stage), (found.Season, found.Stage));
    }

    // Lights came on at 20:20 on the last day of the season, 31 March, and burn to 12:20 on 1 April.
    [Fact]
    public void keep_the_last_night_although_it_ends_after_them()
    {
        var after = Room.Single(d => d.Date == new LocalDate(2027, 4, 1));
        Assert.Equal(new LitSpan(0, 12 * 60 + 20, 12 * 60 + 20), Assert.Single(after.Spans));
        var spell = LitSpells.Of(SampleStudy.Room, new("America/New_York", 2027)).Single(s => s.Start < AprilFirst && s.End > AprilFirst);
        Assert.Equal("Winter crop", spell.Mode.Season);
    }

    // 5 weekdays of 10 h 15 min; 2027 has 261 weekdays, of which 1 January is a holiday; 25 December is a Saturday.
    [Fact]
    public void leave_weekly_hours_alone_but_for_holidays()
    {
        Assert.Equal(260 * 10.25, Hall.Sum(day => day.LitMinutes) / 60, 1e-9);
        Assert.Empty(Hall[0].Spans);
        Assert.Empty(Hall.Single(d => d.Date == new LocalDate(2027, 7, 3)).Spans);
    }

    [Fact]
    public void give_a_day_for_every_day_of_the_year()
    {
        Assert.Equal(365, Room.Count);
        var leap = SampleStudy.Small with { Assumptions = new() { Start = new(2028, 1, 1) } };
        Assert.Equal(366, OperationCalendar.Of(leap, "room").Count);
    }

    [Fact]
    public void count_a_start_for_every_time_the_lights_come_on() =>
        Assert.Equal(260, new AreaOperation(SampleStudy.Hall, new("America/New_York", 2027)).Starts);

    private static long AprilFirst => new SiteYear("America/New_York", 2027).StartOf(new(2027, 4, 1));
}
