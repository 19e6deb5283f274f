using System.Text.Json.Nodes;
using NodaTime;
using RetrofitCalc.Engine.Billing;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Tariffs;
using static RetrofitCalc.Files.Tests.Tariffs.SampleRecord;

namespace RetrofitCalc.Files.Tests.Tariffs;

/// <summary>Meaning of fields: openei.org/services/doc/rest/util_rates, version 7. Values invented unless a source is named.</summary>
public class A_rate_record
{
    [Fact]
    public void gives_name_source_and_days_in_force()
    {
        var record = Flat();
        record["utility"] = "Quillmere Light Department";
        record["uri"] = "https://example.org/rate";
        record["label"] = "539f6a23ec4f024411ec8bf9";
        record["startdate"] = 1388559600; // 2014-01-01 07:00 UTC: midnight in the US mountain zone
        record["enddate"] = 1546214400; // 2018-12-31 00:00 UTC
        var tariff = Tariff(record);
        Assert.Equal(("Flat", new LocalDate(2014, 1, 1), new LocalDate(2018, 12, 31)), (tariff.Name, tariff.ValidFrom, tariff.ValidTo));
        Assert.Equal("Quillmere Light Department; https://example.org/rate; record 539f6a23ec4f024411ec8bf9; US Utility Rate Database", tariff.Source.Source);
    }

    [Fact]
    public void adds_rate_and_adjustment_and_lays_periods_out_by_hour()
    {
        var table = HourTable.Of(Tariff(TimeOfUse()).Energy)!;
        double At(bool weekend, int month, int hour) => table.Periods[table.At(weekend, month, hour)[0]].Blocks[0].Price.PerKilowattHour;
        Assert.Equal([0.09, 0.30, 0.30, 0.09, 0.09], [At(false, 7, 13), At(false, 7, 14), At(false, 9, 17), At(true, 7, 14), At(false, 10, 14)], (a, b) => Math.Abs(a - b) < 1e-12);
    }

    [Theory, InlineData("kWh", BlockUnit.PerMonth), InlineData("kWh daily", BlockUnit.PerDay), InlineData("kWh/kW", BlockUnit.PerKilowatt)]
    public void counts_tiers_from_zero_in_its_unit(string unit, BlockUnit expected)
    {
        var record = Flat();
        record["energyratestructure"] = Value($$"""[[{"max": 300, "rate": 0.2, "unit": "{{unit}}"}, {"max": 0, "rate": 0.1, "unit": "{{unit}}"}]]""");
        var charge = Assert.Single(Tariff(record).Energy);
        Assert.Equal((expected, 300, null), (charge.BlockUnit, charge.Blocks[0].UpTo!.Value.KilowattHours, charge.Blocks[1].UpTo));
    }

    // Prices of Columbia River PUD, schedule A-16-LP: 275 + 100 kW × 10 + 20,000 × 0.077 + 20,000 × 0.051 = 3,835.00 for 40,000 kWh.
    [Fact]
    public void bills_hours_of_use_as_the_schedule_does()
    {
        var record = Flat();
        record["fixedmonthlycharge"] = 275;
        record["flatdemandstructure"] = Value("""[[{"rate": 10}]]""");
        record["demandwindow"] = 30;
        record["energyratestructure"] = Value("""[[{"max": 200, "rate": 0.077, "unit": "kWh/kW"}, {"max": 400, "rate": 0.051, "unit": "kWh/kW"}, {"rate": 0.044, "unit": "kWh/kW"}]]""");
        var month = new MeteredMonth(new(2027, 1), [Energy.FromKilowattHours(40000)], [Power.FromKilowatts(100)]);
        Assert.Equal(3835.00, BillCalculation.Year(Tariff(record), [month], BillTerms.Steady)[0].Total.Units, 1e-9);
    }

    [Fact]
    public void measures_demand_without_a_price_where_tiers_need_it()
    {
        var record = Flat();
        record["energyratestructure"] = Value("""[[{"max": 200, "rate": 0.077, "unit": "kWh/kW"}, {"rate": 0.044}]]""");
        Assert.Equal(0, Assert.Single(Tariff(record).Demand).Price.PerKilowatt);
    }

    [Fact]
    public void keeps_demand_for_all_hours_and_by_time_of_use_side_by_side()
    {
        var record = TimeOfUse();
        record["flatdemandstructure"] = Value("""[[{"rate": 5}], [{"max": 100, "rate": 8}, {"rate": 6, "adj": 0.5}]]""");
        record["flatdemandmonths"] = Months(month => month is >= 6 and <= 9 ? 1 : 0);
        record["demandratestructure"] = Value("""[[{"rate": 0}], [{"rate": 12}]]""");
        record["demandweekdayschedule"] = Table((month, hour) => month == 7 && hour == 15 ? 1 : 0);
        record["demandweekendschedule"] = Table((_, _) => 0);
        record["demandwindow"] = 30;
        var demand = Tariff(record).Demand;
        Assert.Equal(["Demand, period 1", "Demand, period 2", "Time-of-use demand, period 2"], demand.Select(charge => charge.Name));
        Assert.Equal((new AnnualDate(10, 1), new AnnualDate(5, 31)), (demand[0].When.Start!.Value, demand[0].When.End!.Value));
        Assert.Equal((100, 8, 6.5), (demand[1].Blocks[0].UpTo.Kilowatts, demand[1].Blocks[0].Price.PerKilowatt, demand[1].Price.PerKilowatt));
        Assert.Equal(new TariffWindow(DayKind.Weekday, new(15, 0), new(16, 0)), Assert.Single(demand[2].When.Windows));
        Assert.All(demand, charge => Assert.Equal(30, charge.WindowMinutes));
    }

    // Fractions (0.35, 0.5) stand in published records; percentages are assumed by some who read them.
    [Theory, InlineData(0.35, 0.35), InlineData(35, 0.35), InlineData(100, 1), InlineData(1, 1)]
    public void takes_ratchets_as_shares_or_percentages_and_says_so(double written, double share)
    {
        var record = WithDemand();
        record["demandratchetpercentage"] = Months(_ => written);
        var reading = Read(record);
        Assert.Equal(share, Assert.Single(reading.Tariff.Value!.Demand).Ratchet!.Share);
        Assert.Contains(reading.With(FieldUse.Doubtful), field => field.Path == "$.demandratchetpercentage");
    }

    [Fact]
    public void splits_a_charge_whose_ratchet_holds_in_some_months_only()
    {
        var record = WithDemand();
        record["demandratchetpercentage"] = Months(month => month is >= 10 or <= 5 ? 0.5 : 0);
        var demand = Tariff(record).Demand;
        Assert.Equal([null, 0.5], demand.OrderBy(charge => charge.Ratchet is not null).Select(charge => charge.Ratchet?.Share));
        Assert.True(demand.Single(charge => charge.Ratchet is not null).Ratchet!.AcrossCharges); // summer peaks lift winter demand
    }

    [Fact]
    public void reads_the_look_back_of_version_8()
    {
        var record = WithDemand();
        record["lookbackpercent"] = 80;
        record["lookbackrange"] = 6;
        record["lookbackmonths"] = Months(month => month is 7 or 8);
        var ratchet = Assert.Single(Tariff(record).Demand).Ratchet!;
        Assert.Equal((0.8, 6), (ratchet.Share, ratchet.Months));
        Assert.Equal([7, 8], ratchet.PeakMonths);
    }

    [Fact]
    public void bills_in_kilovolt_amperes_or_the_reactive_demand()
    {
        var record = WithDemand();
        record["demandreactivepowercharge"] = 2.7;
        var clause = Assert.IsType<ReactiveAboveShare>(Tariff(record).PowerFactor);
        Assert.Equal((0, 2.7), (clause.FreeShare, clause.PricePerKilovar.PerKilowatt));
        record["flatdemandunit"] = "kVA";
        var reading = Read(record);
        Assert.IsType<BilledInKilovoltAmperes>(reading.Tariff.Value!.PowerFactor);
        Assert.Contains(reading.With(FieldUse.NotUsed), field => field.Path == "$.demandreactivepowercharge");
    }

    [Theory]
    [InlineData("fixedmonthlycharge", null, 12, 12, ChargedPer.Month)]
    [InlineData("fixedchargefirstmeter", "$/month", 12, 12, ChargedPer.Month)]
    [InlineData("fixedchargefirstmeter", "$/day", 1.26, 1.26, ChargedPer.Day)]
    [InlineData("fixedchargefirstmeter", "$/year", 12, 1, ChargedPer.Month)]
    public void charges_what_is_fixed_under_either_name(string field, string? unit, double written, double amount, ChargedPer per)
    {
        var record = Flat();
        record[field] = written;
        if (unit is not null)
            record["fixedchargeunits"] = unit;
        var charge = Assert.Single(Tariff(record).Fixed);
        Assert.Equal((amount, per), (charge.Amount.Units, charge.Per));
    }

    // 1.20 a day × 365/12 = 36.50.
    [Theory, InlineData("minmonthlycharge", null, 20, 20.0), InlineData("mincharge", "$/month", 20, 20.0), InlineData("mincharge", "$/day", 1.2, 36.5), InlineData("mincharge", "$/year", 240, null)]
    public void bills_a_minimum_by_month(string field, string? unit, double written, double? minimum)
    {
        var record = Flat();
        record[field] = written;
        if (unit is not null)
            record["minchargeunits"] = unit;
        Assert.Equal(minimum ?? -1, Tariff(record).MinimumBill?.Units ?? -1, 1e-9);
    }

    [Fact]
    public void adjusts_by_month()
    {
        var record = Flat();
        record["fueladjustmentsmonthly"] = Months(month => month == 12 ? -0.01 : 0.02);
        var prices = Assert.Single(Tariff(record).Adjustments).Prices;
        Assert.Equal((12, 0.02, -0.01), (prices.Count, prices[0].PerKilowattHour, prices[11].PerKilowattHour));
    }

    private static JsonObject WithDemand()
    {
        var record = Flat();
        record["flatdemandstructure"] = Value("""[[{"rate": 9}]]""");
        return record;
    }

    private static Tariff Tariff(JsonObject record)
    {
        var reading = Read(record);
        Assert.Empty(reading.Tariff.Problems);
        return reading.Tariff.Value!;
    }
}
