using NodaTime;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Examples;

namespace RetrofitCalc.Engine.Tests.Economics;

/// <summary>E-14, the small room: 0.6 kW now, 0.3 kW after, 10 a kilowatt a month, never less than the highest of the eleven months before.</summary>
public class The_first_year_under_a_ratchet
{
    // Eleven months still see 0.6 kW; only the twelfth is billed 0.3 kW: 3 saved instead of 36.
    [Fact]
    public void saves_demand_only_once_the_old_peaks_are_forgotten()
    {
        var option = Evaluate(new(2027, 1, 1));
        Assert.Equal((36.0, 3.0), (Round(option.Bill.Demand), Round(option.Bill.FirstYearDemand)));
        Assert.Equal((167.4, 134.4), (Round(option.AnnualBillSaving), Round(option.FirstYearBillSaving)));
        Assert.Equal([.. Enumerable.Repeat(6.0, 11), 3.0], Demand(option));
    }

    // Begun in July, the twelfth month is June.
    [Fact]
    public void begins_in_the_month_of_the_start() =>
        Assert.Equal([6, 6, 6, 6, 6, 3, 6, 6, 6, 6, 6, 6], Demand(Evaluate(new(2027, 7, 15))));

    [Fact]
    public void is_year_1_of_the_cash_flow_and_no_other()
    {
        var option = Evaluate(new(2027, 1, 1));
        Assert.Equal(134.4, option.CashFlow[1].EnergySaving.Units, 1e-6);
        Assert.Equal(167.4 * 1.02, option.CashFlow[2].EnergySaving.Units, 1e-6);
        Assert.Equal(option.FirstCost.Total.Units / 167.4, option.PlainPayback.Years!.Value, 1e-9);
    }

    [Fact]
    public void is_a_steady_year_without_a_ratchet()
    {
        var option = Evaluate(new(2027, 1, 1), null);
        Assert.Equal(option.AnnualBillSaving, option.FirstYearBillSaving);
        Assert.Equal(option.Bill.Total, option.Bill.FirstYearTotal);
    }

    private static OptionResult Evaluate(LocalDate start) => Evaluate(start, new Ratchet(1));

    private static OptionResult Evaluate(LocalDate start, Ratchet? ratchet)
    {
        var demand = new DemandCharge { Name = "Demand", Price = DemandPrice.FromPerKilowatt(10), Ratchet = ratchet };
        var study = SmallRoom.Study with { Assumptions = new() { Start = start }, Tariff = SmallRoom.Study.Tariff with { Demand = [demand] } };
        return StudyEvaluation.Run(study, new()).Options[0];
    }

    private static IEnumerable<double> Demand(OptionResult option) =>
        option.Bill.FirstYear.Select(bill => Round(bill.Lines.Single(line => line.Kind == BillLineKind.Demand).Amount));

    private static double Round(Money amount) => Math.Round(amount.Units, 6);
}
