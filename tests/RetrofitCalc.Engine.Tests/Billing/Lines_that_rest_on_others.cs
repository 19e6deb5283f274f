using NodaTime;
using RetrofitCalc.Engine.Billing;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Samples;

namespace RetrofitCalc.Engine.Tests.Billing;

/// <summary>E-20 to E-22: blocks by hours of use, reactive demand, credit, minimum bill, taxes, rounding, the price factor.</summary>
public class Lines_that_rest_on_others
{
    private static readonly Tariff Plain = Tariff.Flat(SampleTariff.Price(0.10)) with
    {
        Fixed = [new("Customer", Money.FromUnits(10))],
        Demand = [PublishedTariffs.Demand("Demand", 2)],
    };

    // 10 + 100 × 0.10 + 5 × 2 = 30: 20 are missing to 50, and taxes fall on the 50.
    [Fact]
    public void the_minimum_bill_is_topped_up_before_taxes()
    {
        var bill = OneMonth.Bill(Plain with { MinimumBill = Money.FromUnits(50), Taxes = [new("Tax", 0.1)] }, [100], [5]);
        Assert.Equal([(BillLineKind.Minimum, 20), (BillLineKind.Tax, 5.0)], bill.Lines.TakeLast(2).Select(line => (line.Kind, line.Amount.Units)));
        Assert.Equal(55, bill.Total.Units, 1e-9);
    }

    [Fact]
    public void a_bill_at_or_above_the_minimum_has_no_such_line() =>
        Assert.DoesNotContain(OneMonth.Bill(Plain with { MinimumBill = Money.FromUnits(30) }, [100], [5]).Lines, line => line.Kind == BillLineKind.Minimum);

    // Fixed 10, energy 100 in two blocks, demand 10: 5 % of energy is 5.00; 2 % of all, without the other tax, is 2.40; a rebate of 10 % of customer and demand is −2.
    [Fact]
    public void taxes_fall_on_named_charges_with_their_blocks_or_on_all_but_never_on_taxes()
    {
        var tariff = Plain with
        {
            Energy = [SampleTariff.Charge("Energy", new(), PublishedTariffs.Block(400, 0.10), PublishedTariffs.Block(null, 0.10))],
            Taxes = [new("Energy tax", 0.05) { On = ["Energy"] }, new("All", 0.02), new("Rebate", -0.1) { On = ["Customer", "Demand"] }],
        };
        Assert.Equal([(100, 5), (120, 2.4), (20, -2.0)], OneMonth.Bill(tariff, [1000], [5]).Lines.TakeLast(3).Select(line => (line.Quantity, line.Amount.Units)));
    }

    // 400.99 hours of use are 400 whole hours: 35 above 365, of 100 kW, at 0.01.
    [Theory, InlineData(40099, -35), InlineData(36600, -1), InlineData(36599, 0), InlineData(100, 0)]
    public void the_credit_counts_whole_hours_of_use(double kilowattHours, double credit)
    {
        var tariff = Plain with { LoadFactorCredit = new("Credit", 365, DemandPrice.FromPerKilowatt(0.01)) };
        Assert.Equal(credit, OneMonth.Bill(tariff, [kilowattHours], [100]).Lines.Where(line => line.Kind == BillLineKind.Credit).Sum(line => line.Amount.Units), 1e-9);
    }

    [Fact]
    public void a_site_without_demand_has_no_hours_of_use() =>
        Assert.Equal(2, OneMonth.Bill(Plain with { Demand = [], LoadFactorCredit = new("Credit", 365, DemandPrice.FromPerKilowatt(1)) }, [1000]).Lines.Count);

    // First 100 kWh for each kW: by the first demand charge 10 kW make 1,000 kWh, by the named one 4 kW make 400.
    [Theory, InlineData(null, 1000), InlineData("Off-peak demand", 400)]
    public void blocks_by_hours_of_use_follow_the_demand_they_name(string? name, double firstBlock)
    {
        var tariff = Plain with
        {
            Energy = [SampleTariff.Charge("Energy", new(), PublishedTariffs.Block(100, 0.2), PublishedTariffs.Block(null, 0.1)) with { BlockUnit = BlockUnit.PerKilowatt, BlocksByDemand = name }],
            Demand = [PublishedTariffs.Demand("Demand", 2), PublishedTariffs.Demand("Off-peak demand", 1)],
        };
        Assert.Equal(firstBlock, OneMonth.Bill(tariff, [2000], [10, 4]).Lines[1].Quantity, 1e-9);
    }

    // 20 kWh a day: 620 kWh in January, 560 in February.
    [Theory, InlineData(1, 620), InlineData(2, 560)]
    public void blocks_by_day_follow_the_days_of_the_month(int month, double firstBlock)
    {
        var tariff = Plain with { Energy = [SampleTariff.Charge("Energy", new(), PublishedTariffs.Block(20, 0.2), PublishedTariffs.Block(null, 0.1)) with { BlockUnit = BlockUnit.PerDay }] };
        Assert.Equal(firstBlock, OneMonth.Bill(tariff, OneMonth.Meter(tariff, [2000], [1], month)).Lines[1].Quantity, 1e-9);
    }

    // Power factor 0.8 makes 0.75 kvar for each kW: of 200 kW, the higher of two charges, 150 kvar less a free half is 50.
    [Fact]
    public void reactive_demand_is_that_of_the_highest_charge_above_the_free_share()
    {
        var tariff = Plain with
        {
            Demand = [PublishedTariffs.Demand("On-peak", 1), PublishedTariffs.Demand("Any time", 1)],
            PowerFactor = new ReactiveAboveShare(0.5, DemandPrice.FromPerKilowatt(3)),
        };
        var line = OneMonth.Bill(tariff, OneMonth.Meter(tariff, [0], [120, 200]), powerFactor: 0.8).Lines[^1];
        Assert.Equal(("kvar", 3.0, 150.0), (line.Unit, line.UnitPrice, line.Amount.Units));
        Assert.Equal(50, line.Quantity, 1e-9);
        Assert.Equal(0, OneMonth.Bill(tariff, OneMonth.Meter(tariff, [0], [120, 200]), powerFactor: 0.95).Lines[^1].Quantity);
    }

    // March: 1,000 kWh at −0.03; one price counts in all months.
    [Fact]
    public void adjustments_take_the_price_of_their_month()
    {
        var tariff = Plain with { Adjustments = [PublishedTariffs.Adjustment("Fuel", [0.01, 0.02, -0.03, .. Enumerable.Repeat(0.0, 9)]), PublishedTariffs.Adjustment("Rider", 0.005)] };
        var lines = OneMonth.Bill(tariff, OneMonth.Meter(tariff, [1000], [0], month: 3)).Lines.Where(line => line.Kind == BillLineKind.Adjustment);
        Assert.Equal([-30, 5.0], lines.Select(line => line.Amount.Units));
    }

    [Theory, InlineData(0, 12), InlineData(1, 12.3), InlineData(2, 12.35), InlineData(3, 12.346), InlineData(4, 12.3457)]
    public void amounts_keep_as_many_decimals_as_the_tariff_says(int decimals, double amount) =>
        Assert.Equal(amount, OneMonth.Bill(Tariff.Flat(SampleTariff.Price(0.123456789)) with { AmountDecimals = decimals }, [100]).Total.Units, 1e-12);

    // Twice the prices, the same rates of tax: every amount doubles.
    [Fact]
    public void the_price_factor_moves_prices_and_the_minimum_but_not_tax_rates()
    {
        var tariff = PublishedTariffs.LargePowerWithCredit with
        {
            Adjustments = [PublishedTariffs.Adjustment("Rider", 0.01)], PowerFactor = new ReactiveAboveShare(0.5, DemandPrice.FromPerKilowatt(1)),
            MinimumBill = Money.FromUnits(1e6), Taxes = [new("Tax", 0.25)],
        };
        var meter = OneMonth.Meter(tariff, [900000], [2000, 2000, 2000]);
        var once = BillCalculation.Year(tariff, [meter], new(1, 0.8)).Single();
        var twice = BillCalculation.Year(tariff, [meter], new(2, 0.8)).Single();
        Assert.Equal(Enum.GetValues<BillLineKind>().Order(), once.Lines.Select(line => line.Kind).Distinct().Order());
        Assert.Equal(once.Lines.Select(line => line.Amount.Units * 2), twice.Lines.Select(line => line.Amount.Units));
        Assert.Equal(0.25, twice.Lines[^1].UnitPrice);
    }

    // Ten of thirty days of a season: a third of the demand price and of the blocks.
    [Fact]
    public void a_season_of_part_of_the_month_counts_by_its_days()
    {
        var tariff = Plain with
        {
            Energy = [SampleTariff.Charge("Summer", new(), PublishedTariffs.Block(300, 0.2), PublishedTariffs.Block(null, 0.1)), SampleTariff.Charge("Winter", new(), PublishedTariffs.Block(null, 0.1))],
            Demand = [PublishedTariffs.Demand("Summer", 6), PublishedTariffs.Demand("Winter", 3)],
        };
        var meter = OneMonth.Meter(tariff, [500, 900], [50, 40], month: 9) with { EnergyShares = [10 / 30.0, 20 / 30.0], DemandShares = [10 / 30.0, 20 / 30.0] };
        var lines = OneMonth.Bill(tariff, meter).Lines.Skip(1);
        Assert.Equal([100, 400, 900, 50, 40.0], lines.Select(line => Math.Round(line.Quantity, 9)));
        Assert.Equal([20, 40, 90, 100, 80.0], lines.Select(line => line.Amount.Units));
    }

    [Theory, InlineData(SeasonChange.ByDays, 10), InlineData(SeasonChange.SeasonOfFirstDay, 1), InlineData(SeasonChange.SeasonOfLastDay, 30)]
    public void the_season_of_a_day_is_that_of_the_day_the_tariff_says(SeasonChange change, int day) =>
        Assert.Equal(new LocalDate(2027, 9, day), TariffDay.SeasonDay(change, new(2027, 9, 10), new(2027, 9, 1), new(2027, 9, 30)));
}
