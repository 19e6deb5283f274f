using NodaTime;
using RetrofitCalc.Engine.Metering;
using RetrofitCalc.Engine.Studies;
using static RetrofitCalc.Engine.Tests.Metering.Readings;

namespace RetrofitCalc.Engine.Tests.Metering;

/// <summary>Rules of filling: common practice, no source; the numbers are invented.</summary>
public class Gaps_in_a_meter_year
{
    private static MeterYear Year(Func<LocalDateTime, double?> watts)
    {
        var year = new MeterYear { Name = "Invented", FirstDay = NewYear, IntervalMinutes = 15, Watts = new double?[35_040] };
        return year with { Watts = [.. MeterTimes.Of(year, NewYork).Select(start => watts(start.LocalDateTime))] };
    }

    private static bool Within(LocalDateTime at, LocalDateTime first, int minutes) => at >= first && at < first.PlusMinutes(minutes);

    /// <summary>100 before, 500 after, three missing: 200, 300, 400.</summary>
    [Fact]
    public void of_two_hours_at_most_are_bridged_by_a_straight_line()
    {
        var noon = NewYear.At(LocalTime.Noon);
        var filled = GapFilling.Fill(Year(at => Within(at, noon, 45) ? null : at < noon ? 100 : 500), NewYork);
        Assert.Equal([100, 200, 300, 400, 500], filled.Watts.Skip(47).Take(5));
        Assert.Equal((48, 3), (Assert.Single(filled.Filled).First, filled.Filled[0].Count));
        Assert.Contains("straight line", filled.Filled[0].Rule);
    }

    /// <summary>Monday 15 June 2026 is missing; other Mondays to Fridays around draw day-of-month watts, weekends 9999. Working days 1–29 June but the 15th average 15.05.</summary>
    [Fact]
    public void of_a_day_take_the_same_times_of_working_days_around()
    {
        var day = new LocalDate(2026, 6, 15);
        var filled = GapFilling.Fill(Year(at => at.Date == day ? null : at.DayOfWeek is IsoDayOfWeek.Saturday or IsoDayOfWeek.Sunday ? 9999 : at.Day), NewYork);
        var working = Enumerable.Range(1, 29).Where(d => d != 15 && new LocalDate(2026, 6, d).DayOfWeek < IsoDayOfWeek.Saturday).ToList();
        Assert.Equal(20, working.Count);
        var gap = Assert.Single(filled.Filled);
        Assert.Equal(96, gap.Count);
        Assert.Equal(working.Average(), filled.Watts[gap.First]!.Value, 0.001);
        Assert.Contains("two weeks", gap.Rule);
    }

    [Fact]
    public void of_a_season_fall_back_on_the_year()
    {
        var filled = GapFilling.Fill(Year(at => at.Month is 5 or 6 or 7 ? null : at.Hour), NewYork);
        Assert.DoesNotContain(null, filled.Watts);
        Assert.Equal(["mean of the same time on the same kind of day in the year", "mean of the same time on the same kind of day, two weeks before and after"],
            filled.Filled.Select(gap => gap.Rule).Distinct().Order());
    }

    [Fact]
    public void without_any_like_interval_stay_unknown()
    {
        var filled = GapFilling.Fill(Year(at => at.DayOfWeek == IsoDayOfWeek.Saturday ? 100 : null), NewYork);
        Assert.Null(filled.Watts[96 * 4]); // Monday 5 January
        Assert.Equal(100, filled.Watts[96 * 3]); // Sunday is a weekend day as Saturday is
    }

    [Fact]
    public void that_are_not_there_change_nothing()
    {
        var whole = Year(at => at.Hour);
        var filled = GapFilling.Fill(whole, NewYork);
        Assert.Equal(whole.Watts, filled.Watts);
        Assert.Empty(filled.Filled);
    }
}
