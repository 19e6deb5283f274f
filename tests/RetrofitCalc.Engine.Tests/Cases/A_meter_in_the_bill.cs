using NodaTime;
using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Examples;
using RetrofitCalc.Engine.Tests.Samples;
using RetrofitCalc.Engine.Uncertainty;

namespace RetrofitCalc.Engine.Tests.Cases;

/// <summary>E-23 with numbers anyone can redo: ten luminaires of 60 W lit from 6 to 18 become ten of two 15 W tubes.</summary>
public class A_meter_in_the_bill
{
    private static readonly LocalDate FirstOfMarch = new(2025, 3, 1);

    private static readonly DemandCharge Demand = new() { Name = "Demand", Price = DemandPrice.FromPerKilowatt(10) };

    // 2 kW day and night: 17,520 kWh. 0.3 kW less over 4,380 h is 1,314 kWh less; the highest window is a dark one, 2 kW as before.
    [Fact]
    public void is_the_meter_now_and_the_meter_less_the_change_after()
    {
        var result = StudyEvaluation.Run(Metered(SampleMeter.Even(FirstOfMarch, 2)), new());
        Assert.Equal(17_520, result.Now.MeterEnergy.KilowattHours, 1e-6);
        Assert.Equal(1_314, result.Options[0].Bill.Energy.KilowattHours, 1e-6);
        Assert.Equal(131.4, result.Options[0].Bill.Total.Units, 0.06);
        Assert.Equal(0, result.Options[0].Bill.Demand.Units);
        Assert.All(result.Options[0].After.Peaks, peak => Assert.Equal((2.0, 0.0), (Kilowatts(peak.Total), Kilowatts(peak.Lighting))));
        Assert.Equal([.. Enumerable.Range(3, 10), 1, 2], result.Now.Bills.Select(bill => bill.Month.Month));
        Assert.Equal((FirstOfMarch, new LocalDate(2026, 2, 28)), (result.Now.Bills[0].First, result.Now.Bills[^1].Last));
    }

    [Fact]
    public void tells_how_energy_sent_out_is_billed_and_does_not_blame_the_survey_for_it()
    {
        // Noon of 10 March, within the lit hours: −1 kW where 0.6 kW of lights burn.
        var result = StudyEvaluation.Run(Metered(SampleMeter.Even(FirstOfMarch, 2).With((9 * 24 + 12) * 4, -1)), new());
        Assert.Equal(0, result.Meter!.IntervalsExceeded);
        Assert.Contains(result.Remarks, remark => remark.StartsWith("The site sends energy out in 1 reading:", StringComparison.Ordinal));
    }

    [Fact]
    public void is_billed_at_prices_that_are_no_longer_in_force_only_with_a_remark()
    {
        var study = Metered(SampleMeter.Even(FirstOfMarch, 2));
        static bool isAboutForce(string remark) => remark.StartsWith("The tariff is in force", StringComparison.Ordinal);
        Assert.DoesNotContain(StudyEvaluation.Run(study with { Tariff = study.Tariff with { ValidFrom = FirstOfMarch } }, new()).Remarks, isAboutForce);
        Assert.Contains("until 30 June 2025", Assert.Single(StudyEvaluation.Run(study with { Tariff = study.Tariff with { ValidTo = new(2025, 6, 30) } }, new()).Remarks, isAboutForce), StringComparison.Ordinal);
    }

    // One noon reading of 5 kW on 10 March: peak of that month 5 kW now and 4.7 kW after, 0.6 and 0.3 kW of it lighting.
    [Fact]
    public void takes_the_change_off_the_peak_that_falls_into_lit_hours()
    {
        var result = StudyEvaluation.Run(Metered(SampleMeter.Even(FirstOfMarch, 2).With((9 * 24 + 12) * 4, 5)), new());
        Assert.Equal((5.0, 0.6), (Kilowatts(result.Now.Peaks[0].Total), Kilowatts(result.Now.Peaks[0].Lighting)));
        Assert.Equal((4.7, 0.3), (Kilowatts(result.Options[0].After.Peaks[0].Total), Kilowatts(result.Options[0].After.Peaks[0].Lighting)));
        Assert.Equal(3, result.Options[0].Bill.Demand.Units, 1e-9);
    }

    // Ten percent more or less on the present watts moves what is taken off the meter, never the present bill.
    [Fact]
    public void leaves_the_present_bill_alone_when_the_watts_are_uncertain()
    {
        var context = new StudyContext(Metered(SampleMeter.Even(FirstOfMarch, 2)));
        var plan = new CasePlan(context, "Now", new Dictionary<string, Measure>(), null);
        Assert.Equal(plan.Evaluate(Perturbation.None).Bills.Select(bill => bill.Total), plan.Evaluate(new() { ExistingWatts = 1.1 }).Bills.Select(bill => bill.Total));
        Assert.Equal(1.1 * plan.Totals(Perturbation.None).Cost.Units, plan.Totals(new() { ExistingWatts = 1.1 }).Cost.Units, 0.06);
    }

    // Hours of March and November at 4 kW: 743 h when the clocks go forward, 721 h when they go back.
    [Fact]
    public void counts_the_hours_that_really_pass_when_the_clocks_change()
    {
        var bills = StudyEvaluation.Run(Metered(SampleMeter.Even(new(2027, 1, 1), 4)), new()).Now.Bills;
        Assert.Equal([743 * 4.0, 721 * 4.0], new[] { bills[2], bills[10] }.Select(bill => bill.Lines[0].Quantity));
    }

    // 7 November 2027, New York: 2.5 h after midnight it is 1:30 for the second time, within the window from 1 to 2. An hour was lost in March.
    [Fact]
    public void sees_a_peak_in_the_hour_that_comes_twice()
    {
        var meter = SampleMeter.Even(new(2027, 1, 1), 2).With((310 * 24 - 1) * 4 + 10, 9);
        var study = Metered(meter);
        var night = study with { Tariff = study.Tariff with { Demand = [Demand with { When = new() { Windows = [new(DayKind.All, new(1, 0), new(2, 0))] } }] } };
        var evening = study with { Tariff = study.Tariff with { Demand = [Demand with { When = new() { Windows = [new(DayKind.All, new(2, 0), new(3, 0))] } }] } };
        Assert.Equal(9, Kilowatts(StudyEvaluation.Run(night, new()).Now.Peaks[10].Total));
        Assert.Equal(2, Kilowatts(StudyEvaluation.Run(evening, new()).Now.Peaks[10].Total));
    }

    [Theory, InlineData(2027, 365), InlineData(2028, 366)]
    public void shares_all_its_energy_out_among_the_tariffs_periods(int year, int days)
    {
        var study = SampleStudy.Small with { Meter = SampleMeter.Uneven(year, 30, -1, 25), Tariff = SampleTariff.TimeOfUse with { Adjustments = [Rider] } };
        var context = new StudyContext(study);
        Assert.Equal(days * 48, study.Meter.Watts.Count);
        Assert.Equal(study.Meter.Watts.Sum(watts => watts!.Value) / 2000, context.Load.MeteredCells!.Sum(), 1e-6);
        Assert.Equal(context.Load.Tariff.CellHours.Sum(), days * 24, 1e-9);
    }

    // A price that changes at 12:30 cuts an hourly reading in two: half of it falls on either side.
    [Fact]
    public void splits_a_reading_in_proportion_where_a_price_changes_within_it()
    {
        var study = SmallRoomMetered(SampleMeter.Even(new(2027, 1, 1), 0, 60).With(12, 8)) with { Lines = [], Options = [] };
        var halves = study with { Tariff = study.Tariff with { Adjustments = [Rider with { When = new() { Windows = [new(DayKind.All, new(12, 30), new(14, 0))] } }] } };
        var bill = StudyEvaluation.Run(halves, new()).Now.Bills[0];
        Assert.Equal([8.0, 4.0], bill.Lines.Where(line => line.Kind is BillLineKind.Energy or BillLineKind.Adjustment).Select(line => line.Quantity));
    }

    // The survey's 0.6 kW against 0.5 kW of meter: exceeded by 0.1 kW in half of the 35,040 quarter-hours; lighting is 2,628 of 4,380 kWh.
    [Fact]
    public void says_where_the_survey_exceeds_it()
    {
        var result = StudyEvaluation.Run(Metered(SampleMeter.Even(new(2027, 1, 1), 0.5)), new());
        Assert.Equal((17_520, 35_040, 0), (result.Meter!.IntervalsExceeded, result.Meter.Intervals, result.Meter.Filled));
        Assert.Equal(0.1, result.Meter.LargestExcess.Kilowatts, 1e-9);
        Assert.Equal(2628 / 4380.0, result.Meter.LightingShare, 1e-9);
        Assert.Contains(result.Remarks, remark => remark.Contains("17520 of 35040 intervals, by up to 0.1 kW", StringComparison.Ordinal));
    }

    [Fact]
    public void says_what_the_bills_rest_on()
    {
        var filled = SampleMeter.Even(new(2027, 1, 1), 2, 60) with { Filled = [new(5, 3, "same hour of the day before")] };
        var remarks = StudyEvaluation.Run(Metered(filled), new()).Remarks;
        Assert.Contains(remarks, remark => remark.StartsWith("Bills rest on the readings of Invented meter every 60 minutes from 1 January 2027 to 31 December 2027", StringComparison.Ordinal));
        Assert.Contains("3 of 8760 readings were missing and have been filled.", remarks);
        Assert.Contains("Readings of 60 minutes are longer than a demand window of 15 minutes: true peaks may be higher.", remarks);
        Assert.DoesNotContain(remarks, remark => remark.Contains("estimates", StringComparison.Ordinal));
    }

    private static EnergyAdjustment Rider => new()
    {
        Name = "Rider", Prices = [SampleTariff.Price(0.01)], When = new() { Windows = [new(DayKind.Weekday, new(9, 15), new(10, 45))] },
    };

    private static Study SmallRoomMetered(MeterYear meter) => SmallRoom.Study with { Meter = meter };

    private static Study Metered(MeterYear meter) => SmallRoomMetered(meter) with { Tariff = SmallRoom.Study.Tariff with { Demand = [Demand] } };

    private static double Kilowatts(Power power) => Math.Round(power.Kilowatts, 9);
}
