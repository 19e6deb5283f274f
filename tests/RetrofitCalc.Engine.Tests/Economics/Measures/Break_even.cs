using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.Economics;
using RetrofitCalc.Engine.Economics.Measures;
using RetrofitCalc.Engine.Tests.Examples;
using RetrofitCalc.Engine.Uncertainty;

namespace RetrofitCalc.Engine.Tests.Economics.Measures;

public class Break_even
{
    [Fact]
    public void is_where_worth_crosses_zero()
    {
        var point = BreakEven.All(x => 3 * x - 4, 0.1, 10).Single();
        Assert.Equal(4 / 3.0, point.At, 1e-9);
        Assert.True(point is { PaysAbove: true, Jumps: false });
    }

    [Fact]
    public void comes_more_than_once_where_worth_turns() // pays between 1 and 4
    {
        var points = BreakEven.All(x => -(x - 1) * (x - 4), 0.2, 20);
        Assert.Equal([1.0, 4.0], points.Select(point => Math.Round(point.At, 8)));
        Assert.Equal([true, false], points.Select(point => point.PaysAbove));
    }

    [Fact]
    public void may_be_a_jump_past_zero()
    {
        var point = BreakEven.All(x => x < 2.5 ? -10 : 30 + x, 0.1, 10).Single();
        Assert.Equal(2.5, point.At, 1e-8);
        Assert.True(point is { PaysAbove: true, Jumps: true });
    }

    [Theory]
    [InlineData(1)]
    [InlineData(-1)]
    public void is_none_where_it_always_or_never_pays(double worth) => Assert.Empty(BreakEven.All(_ => worth, 0.1, 10));

    [Fact]
    public void needs_a_span_above_zero()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => BreakEven.All(x => x, 0, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => BreakEven.All(x => x, 2, 1));
    }

    // Small room: 131.40 a year at 2 % escalation, lamps avoided in year 7, first cost 646.25, 5 %, ten years
    private static readonly double Bill = Enumerable.Range(1, 10).Sum(y => 131.40 * Math.Pow(1.02, y - 1) / Math.Pow(1.05, y));
    private static readonly double Lamps = 280 * Math.Pow(1.02, 6) / Math.Pow(1.05, 7);

    [Fact] // within the cents to which twelve bills of some 8.40 round
    public void of_the_price_of_electricity_follows_from_its_share_of_the_worth()
    {
        var point = Of(nameof(Perturbation.ElectricityPrice)).Single();
        Assert.Equal((646.25 - Lamps) / Bill, point.At, 1e-3);
        Assert.True(point is { PaysAbove: true, Jumps: false });
    }

    [Fact]
    public void of_first_cost_is_what_it_brings_back()
    {
        var point = Of(nameof(Perturbation.FirstCost)).Single();
        Assert.Equal((Bill + Lamps) / 646.25, point.At, 1e-7);
        Assert.False(point.PaysAbove);
    }

    [Fact] // worth stays above zero whatever the lamps do: 1,102 of bill alone against 646
    public void of_the_life_of_lamps_is_none_where_the_bill_alone_pays() => Assert.Empty(Of(nameof(Perturbation.FluorescentLife)));

    [Fact]
    public void is_not_asked_of_an_input_that_is_none() => Assert.Throws<ArgumentException>(() => Of("Colour"));

    private static IReadOnlyList<BreakEvenPoint> Of(string input) =>
        OptionBreakEven.Of(new PresentCases(new StudyContext(SmallRoom.Study)), SmallRoom.Study.Options[0], input);
}
