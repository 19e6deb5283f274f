using RetrofitCalc.Engine.Lifetimes.Survival;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Tests.Lifetimes.Survival;

public class Failures_counted_at_a_site
{
    // Field case of a trade page: 62 months day and night, 700 of 8,750 lamps failed
    private static readonly FieldFailures Case = new(700, 8_750);

    [Fact]
    public void give_the_share_and_the_hours()
    {
        Assert.Equal(0.08, Case.Share, 1e-15);
        Assert.Equal(45_260, FieldFailures.Burned(62, FieldFailures.MonthDayAndNight).Hours, 1e-9);
    }

    [Fact]
    public void imply_a_life_that_lets_just_that_share_fail()
    {
        var life = Case.ImpliedLife(OperatingTime.FromHours(45_260), 6)!;
        Assert.Equal(64_418, life.Median.Hours, 0.5); // 45,260 · (0.693147 / 0.0833816)^(1/6) = 45,260 · 8.312952^(1/6) = 45,260 · 1.423287
        Assert.Equal(0.08, life.Failed(OperatingTime.FromHours(45_260)), 1e-12);
    }

    [Theory]
    [InlineData(0, 10, 100)]
    [InlineData(10, 10, 100)]
    [InlineData(1, 10, 0)]
    public void imply_nothing_when_none_or_all_have_failed(int failed, int total, double hours) =>
        Assert.Null(new FieldFailures(failed, total).ImpliedLife(OperatingTime.FromHours(hours), 6));

    [Theory]
    [InlineData(11, 10)]
    [InlineData(-1, 10)]
    [InlineData(0, 0)]
    public void cannot_be_more_than_there_are(int failed, int total) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new FieldFailures(failed, total).Share);
}
