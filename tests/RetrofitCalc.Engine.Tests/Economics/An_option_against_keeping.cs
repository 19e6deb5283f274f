using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Safety;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Examples;

namespace RetrofitCalc.Engine.Tests.Economics;

/// <summary>The small room: 10 × 60 W now, 10 × 2 × 15 W after, 4,380 h at 0.10: 262.80 now, 131.40 after.</summary>
public class An_option_against_keeping
{
    [Fact]
    public void saves_the_difference_of_two_bills() => Assert.Equal(131.40, Evaluate(SmallRoom.Study).AnnualBillSaving.Units, 1e-6);

    [Fact]
    public void costs_parts_labour_recycling_and_contingency()
    {
        var cost = Evaluate(SmallRoom.Study).FirstCost;
        Assert.Equal(160, cost.Parts.Units, 1e-9);           // 20 tubes at 8
        Assert.Equal(382.50, cost.Labour.Units, 1e-9);       // 10 × 27 min at 85
        Assert.Equal(45, cost.Disposal.Units, 1e-9);         // 20 lamps at 1, 10 ballasts at 2.50
        Assert.Equal(58.75, cost.Contingency.Units, 1e-9);   // 10 % of 587.50
        Assert.Equal(646.25, cost.Total.Units, 1e-9);
    }

    [Fact]
    public void flows_year_by_year_with_prices_of_the_start_held_through_year_1()
    {
        var flow = Evaluate(SmallRoom.Study).CashFlow;
        Assert.Equal(-646.25, flow[0].Net.Units, 1e-9);
        Assert.Equal(131.40, flow[1].EnergySaving.Units, 1e-6);
        Assert.Equal(131.40 * 1.02, flow[2].EnergySaving.Units, 1e-6);
        // Lamps would have fallen due after 30,000/4,380 = 6.85 years: 20 × (3 + 10 + 1) in year 7, at six rises of 2 %.
        Assert.Equal(280 * Math.Pow(1.02, 6), flow[7].MaintenanceSaving.Units, 1e-6);
        Assert.All(flow.Where(year => year.Year != 7), year => Assert.Equal(0, year.MaintenanceSaving.Units));
    }

    [Fact]
    public void pays_back_within_the_year_in_which_the_sum_turns()
    {
        var result = Evaluate(SmallRoom.Study);
        // 131.40 × (1 + 1.02 + 1.0404 + 1.061208) = 541.57 after four years; 104.68 of the fifth year's 142.23 is 0.736
        Assert.Equal(4.736, result.SimplePayback.Years!.Value, 1e-3);
        Assert.Equal(646.25 / 131.40, result.PlainPayback.Years!.Value, 1e-6);
        Assert.True(result.DiscountedPayback.Years > result.SimplePayback.Years);
    }

    [Fact]
    public void is_worth_its_discounted_flows()
    {
        var result = Evaluate(SmallRoom.Study);
        var expected = -646.25 + Enumerable.Range(1, 10).Sum(y => 131.40 * Math.Pow(1.02, y - 1) / Math.Pow(1.05, y)) + 280 * Math.Pow(1.02, 6) / Math.Pow(1.05, 7);
        Assert.Equal(expected, result.NetPresentValue.Units, 1e-6);
        Assert.Equal(result.NetPresentValue, result.CashFlow[^1].CumulativeDiscounted);
    }

    [Fact]
    public void renewing_like_for_like_pays_for_lamps_and_ballasts_and_saves_no_power()
    {
        var result = Evaluate(With(new RenewLikeForLike()));
        Assert.Equal(0, result.AnnualBillSaving.Units, 1e-9);
        Assert.Equal(260, result.FirstCost.Parts.Units, 1e-9); // 10 × (2 × 3 + 20)
        Assert.Equal(340, result.FirstCost.Labour.Units, 1e-9); // 10 × 24 min at 85
    }

    [Fact]
    public void keeping_costs_and_saves_nothing()
    {
        var costs = new OptionCosts { FixedSum = Money.FromUnits(500), DisposalPerLamp = Money.FromUnits(9) };
        var result = Evaluate(With(new KeepAsIs(), costs: costs));
        Assert.All(result.CashFlow, year => Assert.Equal(0, year.Net.Units));
        Assert.Equal(0, result.SimplePayback.Years);
        Assert.Empty(result.InternalRates);
    }

    [Fact]
    public void prices_given_for_the_line_win_over_the_catalogue_and_the_default_time()
    {
        var cost = Evaluate(With(new DirectWire("tube"), measure => measure with
        {
            PartsPerLuminaire = Money.FromUnits(30), LabourPerLuminaire = OperatingTime.FromMinutes(60),
        })).FirstCost;
        Assert.Equal((300, 850), (cost.Parts.Units, cost.Labour.Units));
    }

    [Fact]
    public void half_as_many_new_luminaires_cost_half_as_many_parts()
    {
        var result = Evaluate(With(new ReplaceLuminaire("luminaire", PerExisting: 0.5)));
        Assert.Equal(300, result.FirstCost.Parts.Units, 1e-9); // 5 × 60
        Assert.Equal(45, result.FirstCost.Disposal.Units, 1e-9); // all ten old ones come down
    }

    [Fact]
    public void a_missing_price_is_named_and_not_taken_as_zero_in_silence()
    {
        var study = SmallRoom.Study with { Catalogue = SmallRoom.Study.Catalogue with { Tubes = [SmallRoom.Tube with { Price = null }] } };
        Assert.Equal(["line"], Evaluate(study).FirstCost.UnpricedLines);
        Assert.Empty(Evaluate(SmallRoom.Study).FirstCost.UnpricedLines);
    }

    [Theory]
    [InlineData(0.20, null, 20 * 10 + 0.20 * 1314)] // by luminaire and by kilowatt-hour saved
    [InlineData(0.20, 0.30, 0.30 * 646.25)]         // cut at the cap
    public void the_incentive_is_paid_up_to_its_cap(double perKilowattHour, double? cap, double expected)
    {
        var costs = new OptionCosts { IncentivePerKilowattHour = EnergyPrice.FromPerKilowattHour(perKilowattHour), IncentiveCap = cap };
        var result = Evaluate(With(new DirectWire("tube"), measure => measure with { IncentivePerLuminaire = Money.FromUnits(20) }, costs));
        Assert.Equal(expected, result.FirstCost.Incentive.Units, 1e-6);
        Assert.Equal(646.25 - expected, result.FirstCost.Total.Units, 1e-6);
    }

    [Fact]
    public void a_measure_that_does_not_fit_is_refused_and_costs_nothing()
    {
        var study = SmallRoom.Study with { Catalogue = SmallRoom.Study.Catalogue with { Tubes = [SmallRoom.Tube with { Base = "G5" }] } };
        var result = Evaluate(study);
        Assert.Equal("line", Assert.Single(result.Refused).Line);
        Assert.Equal(0, result.FirstCost.Total.Units);
    }

    internal static OptionResult Evaluate(Study study) => StudyEvaluation.Run(study, new SafetyRuleBook()).Options[0];

    private static Study With(Measure measure, Func<LineMeasure, LineMeasure>? change = null, OptionCosts? costs = null) => SmallRoom.Study with
    {
        Options = [SmallRoom.Tubes with { Measures = [(change ?? (same => same))(new LineMeasure("line", measure))], Costs = costs ?? new() }],
    };
}
