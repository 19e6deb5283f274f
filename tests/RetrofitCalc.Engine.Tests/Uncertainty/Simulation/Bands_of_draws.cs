using CsCheck;
using RetrofitCalc.Engine.Safety;
using RetrofitCalc.Engine.Tests.Examples;
using RetrofitCalc.Engine.Uncertainty.Simulation;
using static RetrofitCalc.Engine.Tests.Uncertainty.Simulation.LevelRoom;

namespace RetrofitCalc.Engine.Tests.Uncertainty.Simulation;

public class Bands_of_draws
{
    private static readonly SimulationSettings Some = new() { Draws = 1_000 };

    [Fact] // a factor twice as far from 1 moves a linear worth twice as far: the same draws follow from the same seed
    public void are_twice_as_wide_where_a_range_is() =>
        Gen.Select(Gen.Int[0, 3], Gen.Double[0.02, 0.25], Gen.Int[1, 10_000]).Sample((which, width, seed) =>
            Math.Abs(Band(Drawn(which, 2 * width, seed)) / Band(Drawn(which, width, seed)) - 2) < 0.01, iter: 15, threads: 1);

    [Fact]
    public void are_wider_where_lives_are_less_sure() => // by leaps, as changes fall into the study or out of it
        Assert.True(Band(OfLives(0.4)) > Band(OfLives(0.2)) && Band(OfLives(0.2)) > 0);

    private static SimulationResult OfLives(double width) =>
        Draw(SmallRoom.Study, Sure with { LifeUncertainty = width, StudyYears = 20 }, new() { Draws = 500 });

    private static SimulationResult Drawn(int which, double width, int seed)
    {
        var sure = Sure with { Seed = seed };
        return Draw(which switch
        {
            0 => sure with { WattsUncertainty = width },
            1 => sure with { PriceUncertainty = width },
            2 => sure with { HoursUncertainty = width },
            _ => sure with { FirstCostUncertainty = width },
        }, new() { Draws = 200 });
    }

    private static double Band(SimulationResult drawn) => drawn.NetPresentValue.P90 - drawn.NetPresentValue.P10;

    [Fact]
    public void are_points_where_no_input_has_a_range()
    {
        var likely = StudyEvaluation.Run(SmallRoom.Study with { Assumptions = Sure }, new SafetyRuleBook()).Options[0];
        var drawn = Draw(SmallRoom.Study, Sure, new() { Draws = 100 });
        Assert.Equal(likely.NetPresentValue.Units, drawn.NetPresentValue.P10, 1e-9);
        Assert.Equal(drawn.NetPresentValue.P10, drawn.NetPresentValue.P90);
        Assert.Equal(likely.SimplePayback.Years!.Value, drawn.Payback.P50, 1e-9);
        Assert.Equal(likely.CashFlow.Select(flow => flow.Cumulative.Units), drawn.Cumulative.Select(band => band.P90.Units));
        Assert.Empty(drawn.Measurements);
    }

    [Fact]
    public void of_one_input_do_not_know_whether_another_has_a_range()
    {
        var (without, with) = (Draw(Sure with { FirstCostUncertainty = 0.2 }, Some), Draw(Sure with { FirstCostUncertainty = 0.2, PriceUncertainty = 0.3 }, Some));
        Assert.Equal(without.FirstCost.Mean, with.FirstCost.Mean);
        Assert.Equal((without.FirstCost.P10, without.FirstCost.P90), (with.FirstCost.P10, with.FirstCost.P90));
    }

    [Fact] // nobody knows any life here, so that doubts about lives touch nothing
    public void stay_to_the_last_digit_where_a_range_touches_nothing()
    {
        var (without, with) = (Draw(Sure with { PriceUncertainty = 0.2 }, Some), Draw(Sure with { PriceUncertainty = 0.2, LifeUncertainty = 0.5 }, Some));
        Assert.Equal((without.NetPresentValue.Mean, without.NetPresentValue.P10), (with.NetPresentValue.Mean, with.NetPresentValue.P10));
        Assert.Equal(without.Cumulative, with.Cumulative);
        Assert.Equal("ElectricityPrice", Assert.Single(with.Measurements).Input);
    }

    [Fact] // nothing discounted: the sum of all flows is the net present value
    public void of_the_running_sum_begin_with_first_cost_and_end_with_worth()
    {
        var drawn = Draw(SmallRoom.Study, new() { DiscountRate = 0 }, new() { Draws = 1_000 });
        Assert.Equal(drawn.NetPresentValue.P50, drawn.Cumulative[^1].P50.Units, 1e-9);
        Assert.Equal(-drawn.FirstCost.P90, drawn.Cumulative[0].P10.Units, 1e-9);
        Assert.Equal(Enumerable.Range(0, 11), drawn.Cumulative.Select(band => band.Year));
        Assert.All(drawn.Cumulative, band => Assert.True(band.P10 < band.P50 && band.P50 < band.P90));
    }
}
