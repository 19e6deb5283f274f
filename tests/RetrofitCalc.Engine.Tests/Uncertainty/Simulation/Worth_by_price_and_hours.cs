using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.Economics;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Safety;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Examples;
using RetrofitCalc.Engine.Uncertainty.Simulation;

namespace RetrofitCalc.Engine.Tests.Uncertainty.Simulation;

public class Worth_by_price_and_hours
{
    private static TwoWayTable Of(Study study, IReadOnlyList<double> prices, IReadOnlyList<double> hours) =>
        TwoWayTable.Of(new PresentCases(new StudyContext(study)), study.Options[0], prices, hours);

    [Fact]
    public void holds_the_likely_case_in_its_middle()
    {
        var likely = StudyEvaluation.Run(SmallRoom.Study, new SafetyRuleBook()).Options[0];
        var table = Of(SmallRoom.Study, TwoWayTable.Usual, TwoWayTable.Usual);
        Assert.Equal((11, 11), (table.Cells.Count, table.Cells[0].Count));
        Assert.Equal(new TwoWayCell(likely.SimplePayback, likely.NetPresentValue), table.Cells[5][5]);
    }

    [Fact]
    public void is_what_the_study_says_at_that_price()
    {
        var dearer = SmallRoom.Study with { Tariff = Tariff.Flat(EnergyPrice.FromPerKilowattHour(0.13)) };
        var expected = StudyEvaluation.Run(dearer, new SafetyRuleBook()).Options[0];
        var cell = Of(SmallRoom.Study, [1.3], [1]).Cells[0][0];
        Assert.Equal(expected.NetPresentValue.Units, cell.NetPresentValue.Units, 1e-6);
        Assert.Equal(expected.SimplePayback.Years!.Value, cell.Payback.Years!.Value, 1e-9);
    }

    [Fact] // 110,222 · price · hours − 64,625, within the cents of twelve bills
    public void depends_on_the_product_alone_where_nothing_falls_due()
    {
        var table = Of(LevelRoom.Level, [0.6, 1.2], [0.5, 1]);
        Assert.Equal(table.Cells[0][1].NetPresentValue.Units, table.Cells[1][0].NetPresentValue.Units, 1);
        double[][] products = [[0.3, 0.6], [0.6, 1.2]];
        Assert.All(products.Index(), row => Assert.All(row.Item.Index(), product => Assert.Equal(
            LevelRoom.Saving * LevelRoom.YearsWorth * product.Item - LevelRoom.FirstCost, table.Cells[row.Index][product.Index].NetPresentValue.Units, 1.0)));
        Assert.Null(table.Cells[0][0].Payback.Years);
    }

    [Fact]
    public void wants_factors_above_zero()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Of(SmallRoom.Study, [0], [1]));
        Assert.Throws<ArgumentOutOfRangeException>(() => Of(SmallRoom.Study, [1], [101]));
    }
}
