using CsCheck;
using NodaTime;
using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Samples;
using RetrofitCalc.Engine.Uncertainty;

namespace RetrofitCalc.Engine.Tests.Billing;

/// <summary>
/// Walks a whole year minute by minute with nothing but wall times, and must find the energy under each charge and the peak of each
/// demand charge that the exact code finds. Schedules begin and end on whole minutes, so the loop is exact too.
/// </summary>
public class A_slow_minute_by_minute_loop
{
    private static readonly Gen<LocalTime> Time = Gen.Select(Gen.Int[0, 23], Gen.Int[0, 59], (hour, minute) => new LocalTime(hour, minute));

    private static readonly Gen<Stage> Stage = Gen.Select(Time, Time, Gen.Bool, Gen.Bool, (on, off, counts, step) => new Stage
    {
        Name = "stage", LightsOn = on, LightsOff = off, LitStep = step ? SampleCatalogue.OneLamp : null,
        ClockRule = counts && on != off ? ClockRule.CountsHours : ClockRule.FollowsClock,
    });

    private static readonly Gen<Study> Studies = Gen.Select(Stage, Stage, Gen.Int[1, 60], Time, Time, Gen.Int[0, 2].Select(i => new[] { "America/New_York", "Asia/Kolkata", "Europe/Berlin" }[i]), Build);

    [Fact]
    public void finds_the_same_energy_and_peaks() => Studies.Sample(
        study =>
        {
            var exact = CaseEvaluation.Evaluate(new(study), "Now", new Dictionary<string, Measure>(), null, Perturbation.None);
            var slow = MinuteLoop.Run(study);
            foreach (var bill in exact.Bills)
                foreach (var line in bill.Lines.Where(line => line.Kind != BillLineKind.Fixed))
                    Assert.Equal(slow[(bill.Month.Month, line.Kind, line.Charge)], line.Quantity, 1e-6);
            Assert.Equal(slow.Count, exact.Bills.Sum(bill => bill.Lines.Count(line => line.Kind != BillLineKind.Fixed)));
        },
        iter: 12, threads: 1);

    // A meter that shows base load and lighting, as averages of its intervals, tells the bills what the stated base load tells them.
    [Fact]
    public void read_by_a_meter_gives_the_bills_of_the_stated_base_load() => Studies.Sample(
        study =>
        {
            double[] kilowatts = [.. MinuteLoop.Lighting(study, MinuteLoop.HallKilowatts).Select(lighting => lighting + study.Site.BaseLoad.Kilowatts)];
            var metered = study with { Meter = SampleMeter.OfMinutes(kilowatts, 15) };
            Assert.Equal(Quantities(study, Kept), Quantities(metered, Kept), new Close());
            Assert.Equal(Quantities(study, NewHall), Quantities(metered, NewHall), new Close());
        },
        iter: 4, threads: 1);

    // Any load on the meter: what the option takes away is taken away minute by minute. Ten luminaires of 60 W for twenty of 158 W.
    [Fact]
    public void takes_the_lighting_change_off_the_meter_in_the_minutes_in_which_it_happens() => Studies.Sample(
        study =>
        {
            var meter = SampleMeter.Uneven(2027, 15, 9, 30);
            var metered = study with { Meter = meter };
            double[] now = [.. Enumerable.Range(0, 365 * 1440).Select(minute => meter.Watts[minute / 15]!.Value / 1000)];
            double[] after = [.. now.Zip(MinuteLoop.Lighting(study, MinuteLoop.HallKilowatts).Zip(MinuteLoop.Lighting(study, 0.6)), (whole, hall) => whole - hall.First + hall.Second)];
            Assert.Equal(Sorted(MinuteLoop.Quantities(study, now)), Quantities(metered, Kept), new Close());
            Assert.Equal(Sorted(MinuteLoop.Quantities(study, after)), Quantities(metered, NewHall), new Close());
        },
        iter: 4, threads: 1);

    private static readonly Dictionary<string, Measure> Kept = [];

    private static readonly Dictionary<string, Measure> NewHall = new() { ["hall"] = new ReplaceLuminaire(SampleCatalogue.NewLuminaire.Id, 0.5) };

    private static IEnumerable<double> Quantities(Study study, Dictionary<string, Measure> measures) =>
        CaseEvaluation.Evaluate(new(study), "Case", measures, null, Perturbation.None).Bills
            .SelectMany(bill => bill.Lines.Where(line => line.Kind != BillLineKind.Fixed)).Select(line => line.Quantity);

    private static IEnumerable<double> Sorted(Dictionary<(int Month, BillLineKind Kind, int Charge), double> quantities) =>
        quantities.OrderBy(quantity => quantity.Key).Select(quantity => quantity.Value);

    private sealed class Close : IEqualityComparer<double>
    {
        public bool Equals(double x, double y) => Math.Abs(x - y) < 1e-6;

        public int GetHashCode(double value) => 0;
    }

    private static Study Build(Stage first, Stage second, int days, LocalTime on, LocalTime off, string zone)
    {
        var tariff = SampleTariff.TimeOfUse;
        return SampleStudy.Small with
        {
            Site = SampleStudy.Small.Site with { TimeZone = zone, Plant = new() },
            Areas =
            [
                SampleStudy.Room with { Seasons = [SampleStudy.Room.Seasons[0] with { Stages = [first with { Days = days }, second] }] },
                SampleStudy.Hall with { Weekly = new() { Hours = [new([IsoDayOfWeek.Sunday, IsoDayOfWeek.Wednesday], on, off)], Holidays = [new FixedHoliday(new(7, 7))] } },
            ],
            Tariff = tariff with
            {
                Energy = [.. tariff.Energy.Select(charge => charge with { Blocks = [charge.Blocks[^1]] })],
                Demand = [.. tariff.Demand.Select(charge => charge with { Ratchet = null })],
            },
        };
    }
}
