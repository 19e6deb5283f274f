using CsCheck;
using NodaTime;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Safety;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Examples;

namespace RetrofitCalc.Engine.Tests.Uncertainty;

public class Ranges_of_an_option
{
    private static readonly Assumptions Sure = new()
    {
        WattsUncertainty = 0, PriceUncertainty = 0, HoursUncertainty = 0, FirstCostUncertainty = 0, LifeUncertainty = 0,
    };

    [Fact]
    public void are_points_when_every_input_is_known()
    {
        var ranges = Of(Sure);
        Assert.Equal(ranges.NetPresentValue.Low, ranges.NetPresentValue.High);
        Assert.Equal(ranges.Payback.Low, ranges.Payback.High);
        Assert.Empty(ranges.Swings);
    }

    [Fact]
    public void of_one_uncertain_input_are_the_model_at_its_ends()
    {
        var swing = Assert.Single(Of(Sure with { FirstCostUncertainty = 0.2 }).Swings);
        Assert.Equal("FirstCost", swing.Input);
        var ranges = Of(Sure with { FirstCostUncertainty = 0.2 });
        Assert.Equal(646.25 * 0.8, ranges.FirstCost.Low.Units, 1e-6);
        Assert.Equal(646.25 * 1.2, ranges.FirstCost.High.Units, 1e-6);
        Assert.Equal(ranges.NetPresentValue.Low.Units, swing.NetPresentValue.High.Units, 1e-6); // dearer is worth less
        Assert.Equal(ranges.Payback.High!.Value, swing.Payback.High!.Value, 1e-6);
        Assert.Equal(swing.PaybackWithout.Low, swing.PaybackWithout.High);
    }

    [Fact] // price ±10 % moves a saving of 131.40 by 13.14; tubes ±10 % move it by 13.14 as well: √2 × 13.14
    public void combine_as_the_root_of_the_sum_of_squares()
    {
        var saving = Of(Sure with { PriceUncertainty = 0.1, WattsUncertainty = 0.1 }, MeasuredNow).AnnualBillSaving;
        Assert.Equal(131.40 - Math.Sqrt(2) * 13.14, saving.Low.Units, 0.02); // bills are rounded to cents month by month
        Assert.Equal(131.40 + Math.Sqrt(2) * 13.14, saving.High.Units, 0.02);
    }

    [Fact]
    public void are_narrower_once_the_present_watts_are_measured()
    {
        Assert.Contains(Of(new()).Swings, swing => swing.Input == "ExistingWatts");
        Assert.DoesNotContain(Of(new(), MeasuredNow).Swings, swing => swing.Input == "ExistingWatts");
    }

    [Fact]
    public void hold_never_when_it_may_not_pay_back_within_the_study()
    {
        var ranges = Of(Sure with { StudyYears = 5, FirstCostUncertainty = 0.2 }); // likely 4.74 years
        // 517 spent: 402.14 back after three years, 114.86 of the fourth year's 139.44 is 0.824
        Assert.Equal(3.824, ranges.Payback.Low!.Value, 1e-3);
        Assert.Null(ranges.Payback.High);
        Assert.Null(ranges.Swings.Single().Payback.High);
    }

    [Fact]
    public void stay_never_when_no_input_can_help()
    {
        var ranges = Of(Sure with { StudyYears = 1, FirstCostUncertainty = 0.2 });
        Assert.Equal(new Range<double?>(null, null, null), ranges.Payback);
    }

    [Fact]
    public void name_the_widest_swing_first()
    {
        var shares = Of(new()).Swings.Select(swing => Math.Abs(1 / swing.Payback.High!.Value - 1 / swing.Payback.Low!.Value)).ToList();
        Assert.Equal(shares.OrderDescending(), shares);
        Assert.All(Of(new()).Swings, swing => Assert.NotEmpty(swing.Ask));
    }

    [Fact]
    public void never_light_more_hours_than_the_year_has()
    {
        var allDay = SmallRoom.Area with { Weekly = new() { Hours = [SmallRoom.Area.Weekly!.Hours[0] with { Off = new LocalTime(6, 0) }] } };
        var swing = Of(Sure with { HoursUncertainty = 0.1 }, study => study with { Areas = [allDay] }).Swings.Single();
        Assert.Equal(swing.NetPresentValue.Likely, swing.NetPresentValue.High);
        Assert.True(swing.NetPresentValue.Low < swing.NetPresentValue.Likely);
    }

    [Fact] // the second room burns all year; the first still has 10 % to grow: 262.80 + 525.60 now, 131.40 + 262.80 after
    public void let_the_other_rooms_grow_where_one_already_burns_all_year()
    {
        var allDay = SmallRoom.Area with { Id = "exit", Weekly = new() { Hours = [SmallRoom.Area.Weekly!.Hours[0] with { Off = new LocalTime(6, 0) }] } };
        var saving = Of(Sure with { HoursUncertainty = 0.1 }, study => study with
        {
            Areas = [SmallRoom.Area, allDay],
            Lines = [SmallRoom.Line, SmallRoom.Line with { Id = "exit", Area = "exit" }],
            Options = [SmallRoom.Tubes with { Measures = [new("line", new DirectWire("tube")), new("exit", new DirectWire("tube"))] }],
        }).AnnualBillSaving;
        Assert.Equal(131.40 + 262.80 + 13.14, saving.High.Units, 0.05);
        Assert.Equal(0.9 * (131.40 + 262.80), saving.Low.Units, 0.05);
    }

    [Fact]
    public void hold_the_likely_value_and_narrow_when_an_input_is_settled() =>
        Gen.Select(Gen.Double[0, 0.4], Gen.Double[0, 0.4], Gen.Double[0, 0.4], Gen.Double[0, 0.5]).Sample((watts, price, cost, life) =>
        {
            var wide = Of(new() { WattsUncertainty = watts, PriceUncertainty = price, FirstCostUncertainty = cost, LifeUncertainty = life });
            var settled = Of(new() { WattsUncertainty = watts, PriceUncertainty = price, FirstCostUncertainty = 0, LifeUncertainty = life });
            return Holds(wide.NetPresentValue) && Holds(settled.NetPresentValue) &&
                wide.NetPresentValue.Low.Units <= settled.NetPresentValue.Low.Units + 1e-6 &&
                settled.NetPresentValue.High.Units <= wide.NetPresentValue.High.Units + 1e-6;
        }, iter: 40);

    private static bool Holds(Range<Money> range) => range.Low <= range.Likely && range.Likely <= range.High;

    private static Study MeasuredNow(Study study) =>
        study with { Lines = [SmallRoom.Line with { Reading = new(Power.FromWatts(60), new LocalDate(2026, 5, 1)) }] };

    private static OptionRanges Of(Assumptions assumptions, Func<Study, Study>? change = null) => StudyEvaluation.Run(
        (change ?? (same => same))(SmallRoom.Study) with { Assumptions = assumptions }, new SafetyRuleBook()).Options[0].Ranges;
}
