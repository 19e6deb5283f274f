using RetrofitCalc.Engine.Uncertainty.Simulation;
using static RetrofitCalc.Engine.Tests.Uncertainty.Simulation.LevelRoom;

namespace RetrofitCalc.Engine.Tests.Uncertainty.Simulation;

/// <summary>Means and variances of products of independent factors, by hand: E[xy] = E[x]E[y], E[(xy)²] = E[x²]E[y²].</summary>
public class Draws_of_a_linear_case
{
    private const double Width = 0.2;

    private static double MeanWorth => Saving * YearsWorth - FirstCost;

    /// <summary>Variance of a factor of 1 ± w: w²/7 for PERT (beta of 3 and 3), w²/6 for a triangle.</summary>
    private static double Variance(RangeShape shape, double width) => width * width / (shape == RangeShape.Pert ? 7 : 6);

    private static double WorthDeviation(RangeShape shape)
    {
        var (v, first) = (Variance(shape, Width), Variance(shape, 0.15));
        var saved = Saving * Saving + (4 * Saving * Saving + Saving * Saving) * v; // 2 f_e − f_a: E² + variance
        var bill = (1 + v) * (1 + v) * saved - Saving * Saving;
        return Math.Sqrt(YearsWorth * YearsWorth * bill + FirstCost * FirstCost * first);
    }

    private static SimulationResult Drawn(int seed, RangeShape shape, int draws) => Draw(
        Sure with { WattsUncertainty = Width, PriceUncertainty = Width, HoursUncertainty = Width, FirstCostUncertainty = 0.15, Seed = seed },
        new() { Shape = shape, Draws = draws });

    [Theory] // three standard errors: one seed in 370 would fail
    [InlineData(RangeShape.Pert)]
    [InlineData(RangeShape.Triangular)]
    public void have_the_analytic_mean_within_its_standard_error(RangeShape shape)
    {
        var drawn = Drawn(20261, shape, 10_000);
        Assert.InRange((drawn.NetPresentValue.Mean - MeanWorth) / drawn.NetPresentValue.StandardError, -3, 3);
        Assert.InRange((drawn.AnnualSaving.Mean - Saving) / drawn.AnnualSaving.StandardError, -3, 3);
        Assert.InRange((drawn.FirstCost.Mean - FirstCost) / drawn.FirstCost.StandardError, -3, 3);
    }

    [Theory] // standard error of a deviation about 1/√(2n) = 0.7 %, less for short tails
    [InlineData(RangeShape.Pert)]
    [InlineData(RangeShape.Triangular)]
    public void have_the_analytic_deviation(RangeShape shape) =>
        Assert.Equal(1, Drawn(20261, shape, 10_000).NetPresentValue.StandardDeviation / WorthDeviation(shape), 0.02);

    [Fact] // Σ z² of 40 seeds: chi-squared of 40 lies within 18 and 73 but for one case in a thousand (table of quantiles, MathNet.Numerics)
    public void miss_the_mean_by_what_the_standard_error_says()
    {
        var squares = Enumerable.Range(1, 40).Select(seed => Drawn(seed, RangeShape.Pert, 400).NetPresentValue)
            .Sum(worth => Math.Pow((worth.Mean - MeanWorth) / worth.StandardError, 2));
        Assert.InRange(squares,
            MathNet.Numerics.Distributions.ChiSquared.InvCDF(40, 0.0005), MathNet.Numerics.Distributions.ChiSquared.InvCDF(40, 0.9995));
    }

    [Theory] // no escalation: payback = 64,625 f / 13,140 = 4.918 f; a triangle 0.8–1.2 lies up to f with (f − 0.8)²/0.08 below 1
    [InlineData(4.3)]
    [InlineData(4.6)]
    [InlineData(4.9)]
    public void pay_back_within_a_limit_as_often_as_first_cost_allows(double limit)
    {
        var drawn = Draw(Sure with { FirstCostUncertainty = 0.2, EnergyEscalation = 0 }, new() { Shape = RangeShape.Triangular });
        var expected = Math.Pow(limit * Saving / FirstCost - 0.8, 2) / 0.08;
        var chance = drawn.PaybackWithin(limit);
        Assert.InRange((chance.Share - expected) / chance.StandardError, -3, 3);
    }

    [Fact] // 6 years bring 78,840: never is first cost above 1.2200 times; of a triangle 0.6–1.4 beyond that lie (1.4 − 1.22)²/0.32
    public void never_pay_back_where_the_study_ends_too_soon()
    {
        var drawn = Draw(Sure with { FirstCostUncertainty = 0.4, EnergyEscalation = 0, StudyYears = 6 }, new() { Shape = RangeShape.Triangular });
        var never = Math.Pow(1.4 - 6 * Saving / FirstCost, 2) / 0.32;
        Assert.InRange((drawn.PaybackWithin(6).Share - (1 - never)) / drawn.PaybackWithin(6).StandardError, -3, 3);
        Assert.Equal(drawn.PaybackWithin(6), drawn.PaybackWithin(1e9));
        Assert.Equal(never > 0.1, double.IsPositiveInfinity(drawn.Payback.P90));
        Assert.True(double.IsPositiveInfinity(drawn.Payback.Percentile(0.99)));
    }

    [Fact] // 110,222 f_p − 64,625 is above zero for f_p above 0.5863: (0.5863 − 0.4)²/0.72 of a triangle 0.4–1.6 lies below
    public void save_as_often_as_the_price_allows()
    {
        var drawn = Draw(Sure with { PriceUncertainty = 0.6 }, new() { Shape = RangeShape.Triangular });
        var losing = Math.Pow(FirstCost / (Saving * YearsWorth) - 0.4, 2) / 0.72;
        var chance = drawn.NetSavingsPositive;
        Assert.InRange((chance.Share - (1 - losing)) / chance.StandardError, -3, 3);
    }
}
