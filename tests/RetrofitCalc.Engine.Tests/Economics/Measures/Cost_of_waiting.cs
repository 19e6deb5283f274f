using CsCheck;
using RetrofitCalc.Engine.Economics.Measures;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Tests.Economics.Measures;

public class Cost_of_waiting
{
    private static readonly Assumptions Level = new() { DiscountRate = 0.05, EnergyEscalation = 0, CostEscalation = 0 };

    [Fact] // 3 years, 1,000 now, 500 a year: without waiting −1,000 + 500 · 2.723248 = 361.62; after a year −952.38 + 453.51 + 431.92 = −66.95
    public void is_the_worth_now_less_the_worth_later()
    {
        var option = Option(1_000, 500, 500, [0, 0, 0], [0, 0, 0]);
        Assert.Equal(361.62, CostOfWaiting.Worth(option, 0, Level).Units, 0.005);
        Assert.Equal(-66.95, CostOfWaiting.Worth(option, 1, Level).Units, 0.005);
        Assert.Equal(428.57, CostOfWaiting.Of(option, 1, Level).Units, 0.01); // saving of year 1, 476.19, less interest 47.62
    }

    [Fact] // a year's saving of 30 against interest on 1,000 of 47.62
    public void is_negative_where_a_year_saves_less_than_interest() =>
        Assert.Equal((30 - 50) / 1.05, CostOfWaiting.Of(Option(1_000, 30, 30, [0, 0, 0], [0, 0, 0]), 1, Level).Units, 1e-9);

    [Fact] // lamps of 200 due in year 1 are bought when one waits; tubes due two years after the change fall in year 3, not 2
    public void holds_lamps_bought_meanwhile_and_moves_later_replacements()
    {
        var option = Option(1_000, 0, 0, [200, 0, 0], [0, 80, 0]);
        Assert.Equal(200 / 1.05 - 80 / 1.1025 - 1_000, CostOfWaiting.Worth(option, 0, Level).Units, 1e-9);
        Assert.Equal(-80 / 1.157625 - 1_000 / 1.05, CostOfWaiting.Worth(option, 1, Level).Units, 1e-9);
    }

    [Fact]
    public void counts_the_first_year_after_the_change_wherever_it_falls()
    {
        var option = Option(0, 100, 300, [0, 0, 0], [0, 0, 0]);
        Assert.Equal(100 / 1.1025 + 300 / 1.157625, CostOfWaiting.Worth(option, 1, Level).Units, 1e-9);
    }

    [Fact]
    public void lets_prices_rise_meanwhile() => // year 2: 100 · 1.1; first cost 50 · 1.2 at the end of year 1
        Assert.Equal(110 / 1.1025 - 60 / 1.05,
            CostOfWaiting.Worth(Option(50, 100, 100, [0, 0], [0, 0]), 1, Level with { EnergyEscalation = 0.1, CostEscalation = 0.2 }).Units, 1e-9);

    [Fact]
    public void is_all_of_the_worth_when_one_waits_to_the_end_and_does_it_then() =>
        Assert.Equal(-1_000 / 1.157625, CostOfWaiting.Worth(Option(1_000, 500, 500, [0, 0, 0], [0, 0, 0]), 3, Level).Units, 1e-9);

    [Fact] // first cost rises as fast as money is discounted: nothing is gained by paying later
    public void is_never_negative_where_first_cost_rises_with_the_discount_rate() =>
        Gen.Select(Gen.Double[0, 5_000], Gen.Double[0, 900], Gen.Int[1, 9], Gen.Double[0, 0.1]).Sample((first, saved, wait, rate) =>
            CostOfWaiting.Of(Option(first, saved, saved, new double[10], new double[10]), wait, new() { DiscountRate = rate, CostEscalation = rate, EnergyEscalation = 0.01 }).Units >= -1e-9, iter: 1_000);

    [Fact]
    public void cannot_outlast_the_study() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => CostOfWaiting.Of(Option(1, 1, 1, [0], [0]), 2, Level));

    private static DeferrableOption Option(double first, double savedFirst, double saved, double[] kept, double[] changed) => new(
        Money.FromUnits(first), Money.FromUnits(savedFirst), Money.FromUnits(saved), [.. kept.Select(Money.FromUnits)], [.. changed.Select(Money.FromUnits)]);
}
