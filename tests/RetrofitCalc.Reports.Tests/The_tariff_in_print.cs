using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Reports.Tests;

/// <summary>Everything a tariff says is printed, so that a reader can redo the bill.</summary>
public class The_tariff_in_print
{
    private const string S = "\u00A0";
    private static readonly DemandPrice Ten = DemandPrice.FromPerKilowatt(10);

    private static readonly Tariff Full = new()
    {
        Name = "Invented full tariff",
        Fixed = [new FixedCharge("Meter", Money.FromUnits(0.5), ChargedPer.Day)],
        Energy =
        [
            new EnergyCharge
            {
                Name = "Hours of use", BlockUnit = BlockUnit.PerKilowatt,
                Blocks = [new(Energy.FromKilowattHours(200), EnergyPrice.FromPerKilowattHour(0.12)), new(null, EnergyPrice.FromPerKilowattHour(0.09))],
            },
        ],
        Adjustments = [new EnergyAdjustment { Name = "Fuel", Prices = [.. Enumerable.Range(1, 12).Select(month => EnergyPrice.FromPerKilowattHour(month / 1000.0))] }],
        Demand =
        [
            new DemandCharge
            {
                Name = "Demand", Price = Ten, WindowMinutes = 30, Blocks = [new(Power.FromKilowatts(20), DemandPrice.FromPerKilowatt(4))],
                Ratchet = new Ratchet(0.8) { PeakMonths = [6, 7] }, Minimum = Power.FromKilowatts(5), Rounding = new(Power.FromKilowatts(1), RoundingDirection.Up),
            },
        ],
        PowerFactor = new TargetPowerFactor(0.9),
        LoadFactorCredit = new LoadFactorCredit("Long hours", 400, DemandPrice.FromPerKilowatt(0.01)),
        MinimumBill = Money.FromUnits(30),
        Taxes = [new BillTax("Utility tax", 0.0625) { On = ["Demand"] }],
        Holidays = [new EasterHoliday(1)],
        Reading = new MeterReading { DayOfMonth = 15 },
        SeasonChange = SeasonChange.SeasonOfLastDay,
    };

    private static readonly List<string> Rows = [.. TariffTable.Of(new SummaryContext(
        Samples.Quillmere with { Study = Samples.Quillmere.Study with { Tariff = Full, Site = Samples.Quillmere.Study.Site with { PowerFactor = 0.85 } } },
        Samples.Request)).Rows.Select(row => string.Join(" | ", row.Cells))];

    [Theory]
    [InlineData("Meter | each day | $0.50")]
    [InlineData($"Hours of use | all year, all hours; up to 200 kWh for each kW billed | $0.1200/kWh")]
    [InlineData($"Hours of use | all year, all hours | $0.0900/kWh")]
    [InlineData($"Fuel | added, all year, all hours | $0.0010/kWh to $0.0120/kWh, by month")]
    [InlineData($"Power factor | below 0.90, demand is billed times 0.90 over the power factor | 0.85")]
    [InlineData($"Long hours | credit for each kW billed and hour of use above 400 a month | $0.01/kW")]
    [InlineData($"Minimum bill | each month, before taxes | $30.00")]
    [InlineData($"Utility tax | on Demand | 6.25{S}%")]
    [InlineData("Days | billing months begin on day 15; one holiday billed as a weekend day; the season of a month’s last day holds for all of it | –")]
    public void has_a_row_for_each_charge_and_clause(string row) => Assert.Contains(row, Rows);

    [Fact]
    public void says_how_demand_is_measured_and_billed()
    {
        var demand = $"all year, all hours; highest 30 minutes of the month, at least 80{S}% of the highest of 11 months before, of Jun, Jul, at least 5.0{S}kW, rounded up to 1.0{S}kW";
        Assert.Contains($"Demand | {demand}; up to 20.0{S}kW | $4.00/kW", Rows);
        Assert.Contains($"Demand | {demand}; above that | $10.00/kW", Rows);
    }
}
