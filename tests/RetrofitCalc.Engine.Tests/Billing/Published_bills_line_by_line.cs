using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Samples;

namespace RetrofitCalc.Engine.Tests.Billing;

/// <summary>
/// Complete bills by published schedules. Sources stand with the schedules. "Published" totals are printed in the source; "derived" ones
/// are worked by hand from its prices, since it prints no bill.
/// </summary>
public class Published_bills_line_by_line
{
    // Published, June: every line and the total.
    [Fact]
    public void general_service() => Expect(1624.72, OneMonth.Bill(PublishedTariffs.GeneralService, [17588], [30]),
        ("Service charge", 1, "month", 3.74, 3.74), ("Energy", 17588, "kWh", 0.09444, 1661.01),
        ("Adjustment", 17588, "kWh", -0.017192, -302.37), ("Demand", 30, "kW", 262.34 / 30, 262.34));

    // A restaurant of 24,000 kWh and 150 kW. Published is the demand line, printed as 3,404.02 for 3,404.025; the rest is derived.
    [Fact]
    public void medium_general_service_in_summer() => Expect(4930.24, OneMonth.Bill(PublishedTariffs.MediumGeneralService, [24000, null], [150, null]),
        ("Customer charge", 1, "month", 25.42, 25.42), ("Energy, summer", 24000, "kWh", 0.062533, 1500.79), ("Demand, summer", 150, "kW", 22.6935, 3404.03));

    // Derived: 150 kW at 14.7419 is 2,211.285, half a cent, away from zero.
    [Fact]
    public void medium_general_service_in_winter() => Expect(3905.50, OneMonth.Bill(PublishedTariffs.MediumGeneralService, [null, 24000], [null, 150]),
        ("Customer charge", 1, "month", 25.42, 25.42), ("Energy, winter", 24000, "kWh", 0.069533, 1668.79), ("Demand, winter", 150, "kW", 14.7419, 2211.29));

    // Published, every line and the total.
    [Fact]
    public void blocks_power_cost_and_tax_in_Seymour() => Expect(171.55, OneMonth.Bill(PublishedTariffs.Seymour, [1200]),
        ("Base", 1, "month", 7.5, 7.5), ("Energy, block 1", 250, "kWh", 0.064, 16.0), ("Energy, block 2", 450, "kWh", 0.049, 22.05),
        ("Energy, block 3", 500, "kWh", 0.0446, 22.3), ("Power cost", 1200, "kWh", 0.085, 102.0), ("Tax", 169.85, "USD", 0.01, 1.70));

    // Published totals of 675.54 kWh with 45 and 30 % on-peak; the fixed charge is inferred from them.
    [Theory, InlineData(0.45, 96.58, 58.06, 24.52), InlineData(0.30, 83.92, 38.71, 31.21)]
    public void time_of_day_in_River_Falls(double onPeak, double total, double onAmount, double offAmount) =>
        Expect(total, OneMonth.Bill(PublishedTariffs.RiverFalls, [675.54 * onPeak, 675.54 * (1 - onPeak)]),
            ("Fixed", 1, "month", 14, 14), ("On-peak", 675.54 * onPeak, "kWh", 0.191, onAmount), ("Off-peak", 675.54 * (1 - onPeak), "kWh", 0.066, offAmount));

    // Derived: 1,000 kW at 85 % are billed as 1,050.
    [Fact]
    public void demand_grown_by_power_factor_in_Batavia() => Expect(35660.50, Bill(PublishedTariffs.Batavia, 400000, 1000, 0.85),
        ("Customer charge", 1, "month", 100, 100), ("Energy", 400000, "kWh", 0.04362, 17448), ("Demand", 1050, "kW", 17.25, 18112.5));

    // Derived: 100 kW at 93 % are billed as 104, which makes blocks of 20,800 kWh.
    [Fact]
    public void hours_of_use_on_the_Columbia_River() => Expect(3895.80, Bill(PublishedTariffs.ColumbiaRiver, 40000, 100, 0.93),
        ("Basic charge", 1, "month", 275, 275), ("Energy, block 1", 20800, "kWh", 0.077, 1601.6), ("Energy, block 2", 19200, "kWh", 0.051, 979.2),
        ("Demand", 104, "kW", 10, 1040));

    // Derived: 200 kVA after 400 are billed as 240; 160 kW at 80 % are 200 kVA.
    [Fact]
    public void kilovolt_amperes_with_a_ratchet_in_South_Whitley()
    {
        var meter = OneMonth.Meter(PublishedTariffs.SouthWhitley, [80000], [160]);
        Expect(2630.40, OneMonth.Bill(PublishedTariffs.SouthWhitley, meter, powerFactor: 0.8, earlierKilowatts: 320),
            ("Energy, block 1", 72000, "kWh", 0.0241, 1735.2), ("Energy, block 2", 8000, "kWh", 0.0195, 156), ("Maximum load", 240, "kVA", 3.08, 739.2));
    }

    // Derived.
    [Fact]
    public void primary_service_in_Sioux_Falls() => Expect(27139.29, OneMonth.Bill(PublishedTariffs.SiouxFalls, [300000], [800]),
        ("Fixed", 1, "month", 17.29, 17.29), ("Energy", 300000, "kWh", 0.0443, 13290), ("Demand", 800, "kW", 17.29, 13832));

    // Derived: 31 days of January, 120 kWh on-peak, 780 kWh off-peak.
    [Fact]
    public void daily_charge_and_time_of_use_at_Riverland() => Expect(148.98, OneMonth.Bill(PublishedTariffs.Riverland, [null, 120, 780]),
        ("Base service", 31, "day", 1.26, 39.06), ("On-peak, winter", 120, "kWh", 0.3843, 46.12), ("Off-peak", 780, "kWh", 0.0818, 63.80));

    // Derived: 900,000 kWh over 2,000 kW are 450 hours, 85 above 365.
    [Fact]
    public void credit_for_hours_of_use() => Expect(38650, OneMonth.Bill(PublishedTariffs.LargePowerWithCredit, [900000], [2000, 2000, 2000]),
        ("Customer charge", 1, "month", 150, 150), ("Energy", 900000, "kWh", 0.0291, 26190), ("Demand", 2000, "kW", 3.79, 7580),
        ("Second demand charge", 2000, "kW", 1.09, 2180), ("Secondary voltage", 2000, "kW", 1.70, 3400), ("Load-factor credit", 170000, "h·kW", -0.005, -850));

    private static MonthlyBill Bill(Tariff tariff, double kilowattHours, double kilowatts, double powerFactor) =>
        OneMonth.Bill(tariff, OneMonth.Meter(tariff, [kilowattHours], [kilowatts]), powerFactor);

    private static void Expect(double total, MonthlyBill bill, params (string Name, double Quantity, string Unit, double Price, double Amount)[] lines)
    {
        Assert.Equal(lines.Select(line => (line.Name, line.Unit)), bill.Lines.Select(line => (line.Name, line.Unit)));
        foreach (var (expected, line) in lines.Zip(bill.Lines))
        {
            Assert.Equal(expected.Quantity, line.Quantity, 1e-6);
            Assert.Equal(expected.Price, line.UnitPrice, 1e-12);
            Assert.Equal(expected.Amount, line.Amount.Units, 1e-9);
        }
        Assert.Equal(total, bill.Total.Units, 1e-9);
    }
}
