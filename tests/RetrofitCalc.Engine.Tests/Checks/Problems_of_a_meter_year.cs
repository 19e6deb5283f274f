using NodaTime;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Examples;
using RetrofitCalc.Engine.Tests.Samples;

namespace RetrofitCalc.Engine.Tests.Checks;

public class Problems_of_a_meter_year
{
    private static readonly MeterYear Sound = SampleMeter.Even(new(2026, 3, 1), 2);

    [Fact]
    public void are_none_when_twelve_billing_months_are_covered()
    {
        Assert.Empty(Check(Sound));
        Assert.Empty(Check(SampleMeter.Even(new(2028, 1, 1), 2, 60)));
        Assert.Empty(Check(SampleMeter.Even(new(2026, 3, 10), 2), new() { DayOfMonth = 10 }));
    }

    [Fact]
    public void are_gaps_nobody_has_filled() =>
        Assert.Equal("2 of the meter's 35040 intervals have no reading, the first around 2 March 2026. Fill them on the meter page, or remove the meter data.",
            Assert.Single(Check(Sound.With(100, null).With(200, null))).Message);

    [Theory, InlineData(0), InlineData(10), InlineData(60)]
    public void are_intervals_of_another_length(int minutes)
    {
        var problem = Check(Sound with { IntervalMinutes = minutes }).First(problem => problem.Path.StartsWith("Meter", StringComparison.Ordinal));
        Assert.StartsWith(minutes == 60 ? "There are 35040 readings of 60 minutes" : $"The meter's interval is {minutes} minutes", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void are_days_that_are_not_whole() =>
        Assert.StartsWith("There are 35039 readings of 15 minutes; they must fill whole days", Assert.Single(Check(Sound with { Watts = [.. Sound.Watts.Skip(1)] })).Message, StringComparison.Ordinal);

    // A year from 10 March holds eleven whole calendar months.
    [Fact]
    public void are_readings_that_do_not_hold_twelve_billing_months() =>
        Assert.StartsWith("The meter's readings run from 10 March 2026 to 9 March 2027, but the tariff's twelve billing months from 1 April 2026 to 31 March 2027.",
            Assert.Single(Check(SampleMeter.Even(new(2026, 3, 10), 2))).Message, StringComparison.Ordinal);

    [Fact]
    public void are_reading_dates_outside_the_readings() =>
        Assert.Equal("Meter.FirstDay", Assert.Single(Check(Sound, new() { Dates = [.. Enumerable.Range(0, 13).Select(new LocalDate(2026, 2, 15).PlusMonths)] })).Path);

    [Theory, InlineData(double.NaN), InlineData(double.PositiveInfinity), InlineData(2e6)]
    public void are_readings_that_are_no_load(double kilowatts) => Assert.Equal("Meter.Watts[7]", Assert.Single(Check(Sound.With(7, kilowatts))).Path);

    [Fact]
    public void are_filled_gaps_outside_the_readings() =>
        Assert.Equal("Meter.Filled[0]", Assert.Single(Check(Sound with { Filled = [new(35_039, 2, "copied")] })).Path);

    private static IReadOnlyList<StudyProblem> Check(MeterYear meter, MeterReading? reading = null) => StudyEvaluation.Check(
        SmallRoom.Study with { Meter = meter, Tariff = SmallRoom.Study.Tariff with { Reading = reading ?? new() } });
}
