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
