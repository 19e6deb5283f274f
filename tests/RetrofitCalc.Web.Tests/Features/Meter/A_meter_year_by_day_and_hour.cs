using NodaTime;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Web.Features.Meter;

namespace RetrofitCalc.Web.Tests.Features.Meter;

public class A_meter_year_by_day_and_hour
{
    [Fact]
    public void holds_the_average_of_each_hour()
    {
        // 10 kW in the first half of each hour, 30 kW in the second: 20 kW.
        var hours = MeterHours.Of(MeterSamples.Of(30, time => time.Minute == 0 ? 10_000 : 30_000), MeterSamples.Zone);
        Assert.Equal(365, hours.Days);
        Assert.Equal(20_000, hours.Cells[100, 7].Watts);
    }

    // In New York the clocks of 2027 go forward on March 14 at 2:00 and back on November 7 at 2:00.
    [Fact]
    public void leaves_the_skipped_hour_empty_and_averages_the_one_that_comes_twice()
    {
        var year = MeterSamples.Of(60, _ => 10_000);
        var watts = year.Watts.ToArray();
        var november = Period.DaysBetween(year.FirstDay, new LocalDate(2027, 11, 7));
        watts[november * 24 - 1 + 2] = 30_000; // The second hour from 1:00 to 2:00; the year is an hour short since March.
        var hours = MeterHours.Of(year with { Watts = watts }, MeterSamples.Zone);
        Assert.Null(hours.Cells[Period.DaysBetween(year.FirstDay, new LocalDate(2027, 3, 14)), 2].Watts);
        Assert.Equal(20_000, hours.Cells[november, 1].Watts);
    }

    [Fact]
    public void marks_hours_in_which_something_was_filled()
    {
        var year = MeterSamples.DayAndNight() with { Filled = [new FilledGap(3, 1, "invented rule")] };
        var hours = MeterHours.Of(year, MeterSamples.Zone);
        Assert.Equal([false, true, false], new[] { 0, 1, 2 }.Select(hour => hours.Cells[0, hour].Filled));
    }

    [Fact]
    public void finds_the_highest_hour()
    {
        var at = new LocalDateTime(2027, 7, 15, 14, 0);
        var hours = MeterHours.Of(MeterSamples.Of(60, time => time == at ? 71_000 : 20_000), MeterSamples.Zone);
        Assert.Equal((at, 71_000), hours.Highest());
    }

    [Theory]
    [InlineData(23, 77, 20, 10, 6)] // six shades of 10 kW from 20 to 80
    [InlineData(0, 7, 0, 2, 4)] // 1 kW would take eight: 0 to 8
    [InlineData(5, 5, 5, 0.0001, 1)]
    public void takes_at_most_seven_shades_of_a_round_step(double low, double high, double from, double step, int count)
    {
        var steps = ShadeSteps.Over(low, high);
        Assert.Equal(count, steps.Count);
        if (low < high) Assert.Equal((from, step), (steps.LowKilowatts, steps.StepKilowatts));
        Assert.Equal(count - 1, steps.IndexOf(high * 1000));
        Assert.Equal(0, steps.IndexOf(low * 1000));
    }
}
