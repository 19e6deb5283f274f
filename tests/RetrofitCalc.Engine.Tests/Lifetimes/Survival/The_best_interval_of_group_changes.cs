using RetrofitCalc.Engine.Lifetimes.Survival;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Tests.Lifetimes.Survival;

/// <summary>A lamp of 3.00; 15 min or 3 min at 40.00 an hour; 1.00 for recycling: 14.00 alone, 6.00 with the rest. Prices invented.</summary>
public class The_best_interval_of_group_changes
{
    private static readonly WeibullLife Life = new(OperatingTime.FromHours(20_000), 6);
    private static readonly ChangePrice Price = new(Money.FromUnits(14), Money.FromUnits(6));
    private static readonly GroupIntervalCost Cost = new(Life, Price);

    [Fact] // at 70 %: M(0.7) is F(0.7) = 0.0783 to four figures, so (6 + 14 · 0.0783) / 14 = 0.5069 for 1,000 h
    public void costs_the_group_change_and_the_failures_before_it() =>
        Assert.Equal(0.5069, Cost.At(OperatingTime.FromHours(14_000)).Units, 1e-4);

    [Fact] // mean life 20,000 · Γ(7/6) / (ln 2)^(1/6) = 20,000 · 0.927719 / 0.940741 = 19,723 h
    public void stands_beside_changing_each_as_it_fails() => Assert.Equal(14_000 / 19_723.0, Cost.SpotOnly.Units, 1e-5);

    [Fact]
    public void is_lower_than_any_other_on_the_curve()
    {
        var best = Cost.Best();
        Assert.All(Cost.Curve(OperatingTime.FromHours(400), OperatingTime.FromHours(80_000), 399), point => Assert.True(point.Cost >= best.Cost));
        Assert.True(best.Cost < best.SpotOnly);
    }

    [Fact] // where the slope is zero T · m(T) = M(T) + c_group/c_spot: here by steps of 1 h
    public void lies_where_the_next_hour_costs_as_much_as_the_average()
    {
        var best = Cost.Best().Interval!.Value.Hours;
        double M(double hours) => RenewalFunction.Of(6, 2, 2_000).Failures(Life, AgeMix.New, OperatingTime.FromHours(hours)).Value;
        Assert.Equal(M(best) + 6 / 14.0, best * (M(best + 1) - M(best - 1)) / 2, 1e-3);
    }

    [Fact] // the usual rule, read: 70 to 80 % of rated life
    public void lies_about_seventy_to_eighty_percent_of_rated_life_at_usual_prices() =>
        Assert.InRange(Cost.Best().Interval!.Value / Life.Median, 0.68, 0.82);

    [Fact]
    public void is_none_when_a_group_change_costs_nearly_as_much() =>
        Assert.Null(new GroupIntervalCost(Life, new(Money.FromUnits(14), Money.FromUnits(12))).Best().Interval);

    [Fact]
    public void is_none_for_parts_that_fail_by_chance_alone() => // new ones are no better than old ones
        Assert.Null(new GroupIntervalCost(new(OperatingTime.FromHours(20_000), 1), Price).Best().Interval);

    [Fact]
    public void is_there_up_to_the_dearest_group_change_and_not_beyond()
    {
        var most = Cost.DearestGroupChange().Units;
        Assert.NotNull(new GroupIntervalCost(Life, Price with { Group = Money.FromUnits(most * 0.999) }).Best().Interval);
        Assert.Null(new GroupIntervalCost(Life, Price with { Group = Money.FromUnits(most * 1.001) }).Best().Interval);
    }

    [Fact]
    public void is_worth_nothing_where_old_parts_fail_less_than_new_ones() =>
        Assert.Equal(Money.Zero, new GroupIntervalCost(new(OperatingTime.FromHours(20_000), 0.8), Price).DearestGroupChange());

    [Fact] // rule of thumb, read: group pays when spot labour less group labour exceeds the price of the lamp
    public void agrees_with_the_rule_of_thumb_of_labour_saved_against_the_lamp()
    {
        bool Pays(double lamp, double spot, double group) => new GroupIntervalCost(Life, new(Money.FromUnits(lamp + spot), Money.FromUnits(lamp + group))).Best().Interval is not null;
        Assert.True(Pays(lamp: 3, spot: 10, group: 2));
        Assert.False(Pays(lamp: 10, spot: 6, group: 2));
    }

    [Fact]
    public void comes_later_the_dearer_the_group_change()
    {
        var cheap = new GroupIntervalCost(Life, Price with { Group = Money.FromUnits(4) }).Best().Interval!.Value;
        Assert.True(cheap < Cost.Best().Interval!.Value);
    }

    [Theory]
    [InlineData(0, 6)]
    [InlineData(14, 0)]
    public void needs_prices(double spot, double group) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new GroupIntervalCost(Life, new(Money.FromUnits(spot), Money.FromUnits(group))));
}
