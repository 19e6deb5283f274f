using RetrofitCalc.Engine.Lifetimes.Survival;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Tests.Lifetimes.Survival;

public class Replacements_to_expect
{
    private static readonly WeibullLife Life = new(Hours(20_000), 6);
    private static readonly PartGroup Fresh = new(400, Life, AgeMix.New, Hours(4_000));

    [Fact]
    public void add_up_over_the_years_to_the_renewal_function()
    {
        var years = ReplacementForecast.ByYear(Fresh, new SpotReplacement(), 12);
        var whole = RenewalFunction.Of(6, 2.4).Failures(Life, AgeMix.New, Hours(48_000)).Value * 400;
        Assert.Equal(whole, years.Sum(year => year.Parts), 1e-6);
        Assert.All(years, year => Assert.Equal(0, year.Group));
    }

    [Fact] // 7.1 in ten between 80 and 120 % of rated life, which are years 5 and 6, and few second failures
    public void gather_about_the_rated_life()
    {
        var years = ReplacementForecast.ByYear(Fresh, new SpotReplacement(), 8);
        Assert.Equal(400 * (1 - Math.Pow(2, -Math.Pow(0.2, 6))), years[0].Parts, 1e-3);
        Assert.Equal(283.05 + 1.67, years[4].Parts + years[5].Parts, 0.01); // F, and F∗F by sums of 200,000 steps
    }

    [Theory] // all ages carried along in steps of 100 h, made new at the changes
    [InlineData(0, 14_000)]
    [InlineData(9_000, 5_000)]
    [InlineData(26_000, 0)]
    public void under_group_policy_agree_with_ages_carried_along(double age, double first)
    {
        var parts = Fresh with { Ages = AgeMix.All(Hours(age)) };
        var years = ReplacementForecast.ByYear(parts, new GroupReplacement(Hours(14_000), Hours(first)), 10);
        var steps = LampsFollowed.ByStep(Life, Hours(age), Hours(100), (400, (int)first / 100, 140));
        Assert.All(years, year => Assert.Equal(400 * steps.Skip((year.Year - 1) * 40).Take(40).Sum(), year.Spot.Value, 0.05));
    }

    [Fact] // 14,000 h at 4,000 h a year: after 3.5, 7 and 10.5 years
    public void change_the_group_in_the_years_in_which_its_hours_run_out()
    {
        var years = ReplacementForecast.ByYear(Fresh, new GroupReplacement(Hours(14_000), Hours(14_000)), 11);
        Assert.Equal([0, 0, 0, 400, 0, 0, 400, 0, 0, 0, 400], years.Select(year => year.Group));
    }

    [Fact]
    public void leave_out_a_change_on_the_last_day()
    {
        var years = ReplacementForecast.ByYear(Fresh, new GroupReplacement(Hours(14_000), Hours(14_000)), 7);
        Assert.Equal(400, years.Sum(year => year.Group));
    }

    [Fact]
    public void change_the_group_at_once_when_it_is_overdue()
    {
        var policy = GroupReplacement.At(Hours(20_000), 0.7, Hours(15_000));
        var years = ReplacementForecast.ByYear(Fresh with { Ages = AgeMix.All(Hours(15_000)) }, policy, 3);
        Assert.Equal(400, years[0].Group);
        Assert.Equal(400 * (1 - Math.Pow(2, -Math.Pow(0.2, 6))), years[0].Spot.Value, 1e-3); // new from the first day
    }

    [Fact] // 2^(−0.7^6) = 0.9217 survive: one lamp in thirteen fails between changes, and hardly any twice
    public void fail_seldom_between_changes_at_seventy_percent()
    {
        var cycle = new ReplacementForecast(Fresh, new GroupReplacement(Hours(14_000), Hours(14_000)), Hours(14_000)).SpotUntil(Hours(14_000));
        Assert.Equal(400 * 0.0783, cycle.Value, 0.1);
    }

    [Fact]
    public void can_be_asked_for_a_season()
    {
        var forecast = new ReplacementForecast(Fresh, new SpotReplacement(), Hours(20_000));
        var spring = forecast.SpotBetween(Hours(16_000), Hours(17_500)) + forecast.SpotBetween(Hours(17_500), Hours(20_000));
        Assert.Equal(ReplacementForecast.ByYear(Fresh, new SpotReplacement(), 5)[4].Spot.Value, spring.Value, 1e-9);
    }

    [Fact] // 10 spot at 15 min and 400 together at 3 min: 2.5 h + 20 h
    public void need_hours_of_work()
    {
        var work = new PartWork(OperatingTime.FromMinutes(15), OperatingTime.FromMinutes(3));
        Assert.Equal(22.5, new ExpectedYear(1, new ExpectedCount(10, 0), 400).Labour(work).Hours, 1e-12);
        Assert.Equal(410, new ExpectedYear(1, new ExpectedCount(10, 0), 400).Parts);
    }

    [Fact]
    public void never_come_where_nothing_burns()
    {
        var dark = Fresh with { HoursPerYear = OperatingTime.Zero };
        Assert.All(ReplacementForecast.ByYear(dark, new GroupReplacement(Hours(14_000), OperatingTime.Zero), 3), year => Assert.Equal(0, year.Parts));
        Assert.All(PlainInterval.ByYear(dark, new SpotReplacement(), 3), count => Assert.Equal(0, count));
    }

    [Fact]
    public void share_one_renewal_function_among_lines_of_one_shape()
    {
        var shared = RenewalFunction.Of(6, 4);
        var own = ReplacementForecast.ByYear(Fresh, new SpotReplacement(), 6);
        var lent = ReplacementForecast.ByYear(Fresh, new SpotReplacement(), 6, shared);
        Assert.All(own.Zip(lent), pair => Assert.Equal(pair.First.Parts, pair.Second.Parts, 1e-9));
    }

    [Fact] // new at the start: all after 20,000 h in year 5 and after 40,000 h in year 10
    public void stand_beside_the_plain_interval()
    {
        Assert.Equal([0, 0, 0, 0, 400, 0, 0, 0, 0, 400, 0], PlainInterval.ByYear(Fresh, new SpotReplacement(), 11));
        Assert.Equal([0, 0, 0, 400, 0], PlainInterval.ByYear(Fresh, new GroupReplacement(Hours(14_000), Hours(14_000)), 5));
    }

    private static OperatingTime Hours(double hours) => OperatingTime.FromHours(hours);
}
