using NodaTime;
using RetrofitCalc.Engine.Billing;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Samples;

namespace RetrofitCalc.Engine.Tests.Billing;

/// <summary>E-08: measured peak, ratchet, power factor, rounding, minimum, in that order.</summary>
public class Demand_that_is_billed
{
    private static readonly DemandCharge Demand = PublishedTariffs.Demand("Demand", 1);

    [Theory]
    [InlineData(RoundingDirection.Nearest, 104.5, 105), InlineData(RoundingDirection.Nearest, 104.4, 104)]
    [InlineData(RoundingDirection.Up, 104.1, 105), InlineData(RoundingDirection.Up, 104, 104)]
    [InlineData(RoundingDirection.Down, 104.9, 104), InlineData(RoundingDirection.Down, 105, 105)]
    public void is_rounded_to_whole_steps(RoundingDirection direction, double peak, double billed) =>
        Assert.Equal(billed, Billed(Demand with { Rounding = new(Power.FromKilowatts(1), direction) }, peak), 1e-9);

    // 0.1 + 0.2 is 0.30000000000000004 in binary; 30 steps of 0.01 kW are not 31.
    [Fact]
    public void is_not_rounded_up_for_the_noise_of_the_arithmetic() =>
        Assert.Equal(0.3, Billed(Demand with { Rounding = new(Power.FromWatts(10), RoundingDirection.Up) }, 0.1 + 0.2), 1e-12);

    [Theory, InlineData(40, 50), InlineData(50, 50), InlineData(60, 60)]
    public void is_at_least_the_minimum(double peak, double billed) =>
        Assert.Equal(billed, Billed(Demand with { Minimum = Power.FromKilowatts(50) }, peak), 1e-9);

    // 60 kW at 80 % are 75 kVA, which clear a minimum of 70; 60 kW would not. A minimum of 10.5 kW is not rounded down to 10.
    [Fact]
    public void takes_the_power_factor_before_rounding_and_the_minimum_last()
    {
        Assert.Equal(75, Billed(Demand with { Minimum = Power.FromKilowatts(70) }, 60, new BilledInKilovoltAmperes(), 0.8), 1e-9);
        Assert.Equal(63, Billed(Demand with { Rounding = new(Power.FromKilowatts(1), RoundingDirection.Down) }, 51, new BilledInKilovoltAmperes(), 0.8), 1e-9);
        Assert.Equal(10.5, Billed(Demand with { Minimum = Power.FromKilowatts(10.5), Rounding = new(Power.FromKilowatts(1), RoundingDirection.Down) }, 2), 1e-9);
    }

    [Theory, InlineData(0.95, 100), InlineData(0.90, 100), InlineData(0.81, 111.111111)]
    public void is_raised_to_a_target_power_factor_only_from_below(double powerFactor, double billed) =>
        Assert.Equal(billed, Billed(Demand, 100, new TargetPowerFactor(0.9), powerFactor), 1e-6);

    // 91.5 % is three and a half points below 95 %: parts of a point count in proportion.
    [Theory, InlineData(0.96, 100), InlineData(0.95, 100), InlineData(0.915, 107)]
    public void grows_by_a_share_for_each_missing_point(double powerFactor, double billed) =>
        Assert.Equal(billed, Billed(Demand, 100, new AddedPerPoint(0.95, 0.02), powerFactor), 1e-9);

    [Fact]
    public void is_changed_only_where_the_clause_names_the_charge()
    {
        var other = new BilledInKilovoltAmperes { On = ["Another"] };
        Assert.Equal(100, Billed(Demand, 100, other, 0.8), 1e-9);
        Assert.Equal(125, Billed(Demand, 100, other with { On = ["Another", "Demand"] }, 0.8), 1e-9);
    }

    [Fact]
    public void needs_the_power_factor_where_a_clause_applies() =>
        Assert.Throws<ArgumentException>(() => Billed(Demand, 100, new BilledInKilovoltAmperes(), null));

    // 100 kW: 30 at 1.00, 40 at 2.00, 30 above at 5.00; at 50 kW nothing lies above.
    [Fact]
    public void is_priced_by_blocks()
    {
        var charge = PublishedTariffs.Demand("Demand", 5) with { Blocks = [Block(30, 1), Block(70, 2)] };
        Assert.Equal([("Demand, block 1", 30), ("Demand, block 2", 80), ("Demand, block 3", 150.0)], Lines(charge, 100));
        Assert.Equal([("Demand, block 1", 30), ("Demand, block 2", 40.0)], Lines(charge, 50));
    }

    // Summer peak 200 kW in July; 80 % of it in each later month, by the winter charge too, which measured 100 kW.
    [Fact]
    public void can_be_lifted_by_the_peaks_of_another_charge_in_named_months()
    {
        var ratchet = new Ratchet(0.8) { PeakMonths = [7], AcrossCharges = true };
        Assert.Equal(160, AfterJuly(ratchet), 1e-9);
        Assert.Equal(100, AfterJuly(ratchet with { AcrossCharges = false }), 1e-9);
        Assert.Equal(100, AfterJuly(ratchet with { PeakMonths = [8, 9] }), 1e-9);
    }

    // Before the change 300 kW all year, 100 kW after it: with half of eleven months' peaks, eleven months are billed 150 kW, the twelfth 100.
    [Fact]
    public void remembers_the_year_before_for_as_many_months_as_the_ratchet_looks_back()
    {
        var tariff = Tariff.Flat(SampleTariff.Price(0)) with { Demand = [Demand with { Ratchet = new(0.5) }] };
        MeteredMonth[] Year(double kilowatts) => [.. Enumerable.Range(1, 12).Select(month => OneMonth.Meter(tariff, [0], [kilowatts], month))];
        var billed = BillCalculation.Year(tariff, Year(100), new(Before: Year(300))).Select(bill => bill.Lines[^1].Quantity);
        Assert.Equal([.. Enumerable.Repeat(150.0, 11), 100.0], billed);
    }

    private static double AfterJuly(Ratchet ratchet)
    {
        var tariff = Tariff.Flat(SampleTariff.Price(0)) with { Demand = [PublishedTariffs.Demand("Summer", 1), PublishedTariffs.Demand("Winter", 1) with { Ratchet = ratchet }] };
        var july = OneMonth.Meter(tariff, [0], [200, null], month: 7);
        var october = OneMonth.Meter(tariff, [0], [null, 100], month: 8) with { Month = new YearMonth(2027, 10) };
        return BillCalculation.Year(tariff, [july, october], BillTerms.Steady)[1].Lines[^1].Quantity;
    }

    private static double Billed(DemandCharge charge, double peak, PowerFactorClause? clause = null, double? powerFactor = null)
    {
        var tariff = Tariff.Flat(SampleTariff.Price(0)) with { Demand = [charge], PowerFactor = clause };
        return OneMonth.Bill(tariff, OneMonth.Meter(tariff, [0], [peak]), powerFactor).Lines.Single(line => line.Kind == BillLineKind.Demand).Quantity;
    }

    private static IEnumerable<(string, double)> Lines(DemandCharge charge, double peak) =>
        OneMonth.Bill(Tariff.Flat(SampleTariff.Price(0)) with { Demand = [charge] }, [0], [peak]).Lines.Skip(1).Select(line => (line.Name, line.Amount.Units));

    private static DemandBlock Block(double upTo, double price) => new(Power.FromKilowatts(upTo), DemandPrice.FromPerKilowatt(price));
}
