using NodaTime;
using RetrofitCalc.Engine.Lifetimes.Survival;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Tests.Lifetimes.Survival;

public class Ages_at_the_start
{
    private static readonly WeibullLife Life = new(OperatingTime.FromHours(20_000), 6);
    private static readonly LocalDate Start = new(2027, 1, 1);

    [Fact]
    public void follow_from_the_days_on_which_parts_were_fitted()
    {
        // 1 January 2023 lies 1,461 days back, four years of 365.25 days: 4 · 4,000 h
        var mix = AgeMix.Installed([new(new(2023, 1, 1), 30), new(new(2027, 1, 1), 10)], Start, OperatingTime.FromHours(4_000));
        Assert.Equal([new(0.75, OperatingTime.FromHours(16_000)), new(0.25, OperatingTime.Zero)], mix.Shares);
    }

    [Fact]
    public void are_zero_for_parts_fitted_after_the_start() =>
        Assert.Equal(0, AgeMix.Installed([new(new(2028, 1, 1), 5)], Start, OperatingTime.FromHours(4_000)).Shares.Single().Burned.Hours);

    [Fact]
    public void spread_evenly_over_a_span() =>
        Assert.Equal([1_250, 3_750, 6_250, 8_750], AgeMix.Spread(OperatingTime.Zero, OperatingTime.FromHours(10_000), 4).Shares.Select(s => s.Burned.Hours));

    [Fact]
    public void fail_each_by_its_own_age()
    {
        var mix = AgeMix.Of([(1, OperatingTime.FromHours(18_000)), (3, OperatingTime.Zero)]);
        var more = OperatingTime.FromHours(3_000);
        var byHand = 0.25 * (1 - Life.Surviving(OperatingTime.FromHours(21_000)) / Life.Surviving(OperatingTime.FromHours(18_000))) + 0.75 * Life.Failed(more);
        Assert.Equal(byHand, mix.Failed(Life, more), 1e-14);
    }

    [Fact] // renewal theory: of settled ages, failures in a short time are time over mean life
    public void settle_so_that_failures_become_even() =>
        Assert.Equal(50 / Life.Mean.Hours, AgeMix.Settled(Life, 2_000).Failed(Life, OperatingTime.FromHours(50)), 2e-6);

    [Fact]
    public void need_parts() => Assert.Throws<ArgumentException>(() => AgeMix.Of([(0, OperatingTime.Zero)]));

    [Fact]
    public void do_not_run_backwards() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => AgeMix.Spread(OperatingTime.FromHours(2), OperatingTime.FromHours(1)));
}
