using MathNet.Numerics.Distributions;
using NodaTime;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Safety;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Examples;
using RetrofitCalc.Engine.Uncertainty.Distributions;
using static RetrofitCalc.Engine.Tests.Uncertainty.Simulation.LevelRoom;

namespace RetrofitCalc.Engine.Tests.Uncertainty.Simulation;

public class How_often_a_band_is_right
{
    private const int Cases = 40, Truths = 20;

    /// <summary>
    /// Truths come from outside: factors of a beta distribution by MathNet.Numerics, written into the study itself (price, watts, times
    /// of day, parts, lives), which is then evaluated as it stands. 800 truths: 0.80 ± 0.014 and what 250 draws leave open, ± 0.004.
    /// </summary>
    [Fact]
    public void is_four_times_in_five_from_P10_to_P90()
    {
        var random = new Random(77);
        var (worth, saving, cost) = (0, 0, 0);
        for (var number = 0; number < Cases; number++)
        {
            var study = Generated(random, number);
            var drawn = Draw(study, study.Assumptions, new() { Draws = 250, LivesTogether = 0 });
            for (var truth = 0; truth < Truths; truth++)
            {
                var found = StudyEvaluation.Run(Settled(study, random), new SafetyRuleBook()).Options[0];
                worth += Holds(drawn.NetPresentValue, found.NetPresentValue);
                saving += Holds(drawn.AnnualSaving, found.AnnualBillSaving);
                cost += Holds(drawn.FirstCost, found.FirstCost.Total);
            }
        }
        Assert.All([worth, saving, cost], held => Assert.Equal(0.8, held / (double)(Cases * Truths), 0.05));
    }

    private static int Holds(SampleStatistics band, Money truth) => truth.Units >= band.P10 && truth.Units <= band.P90 ? 1 : 0;

    private static Study Generated(Random random, int number) => SmallRoom.Study with
    {
        Lines = [SmallRoom.Line with { Count = 100 + random.Next(100), BurnHours = OperatingTime.FromHours(random.Next(20_000)) }],
        Tariff = Tariff.Flat(EnergyPrice.FromPerKilowattHour(0.05 + 0.15 * random.NextDouble())),
        Assumptions = new()
        {
            Seed = 1_000 + number, StudyYears = 8 + random.Next(12), WattsUncertainty = 0.02 + 0.2 * random.NextDouble(),
            PriceUncertainty = 0.02 + 0.4 * random.NextDouble(), HoursUncertainty = 0.02 + 0.3 * random.NextDouble(),
            FirstCostUncertainty = 0.02 + 0.4 * random.NextDouble(), LifeUncertainty = 0.05 + 0.4 * random.NextDouble(),
        },
    };

    /// <summary>The study as it turns out: every uncertain input has a value, written where people would enter it.</summary>
    private static Study Settled(Study study, Random random)
    {
        var a = study.Assumptions;
        double factor(double width) => 1 - width + 2 * width * Beta.Sample(random, 3, 3);
        var (price, hours, old, cost) = (factor(a.PriceUncertainty), factor(a.HoursUncertainty), factor(a.WattsUncertainty), factor(a.FirstCostUncertainty));
        var (watts, oldLife, newLife) = (factor(a.WattsUncertainty), factor(a.LifeUncertainty), factor(a.LifeUncertainty));
        var wire = study.Options[0];
        return study with
        {
            Assumptions = Sure with { StudyYears = a.StudyYears },
            Tariff = Tariff.Flat(EnergyPrice.FromPerKilowattHour(study.Tariff.Energy[0].Blocks[0].Price.PerKilowattHour * price)),
            Areas = [SmallRoom.Area with { Weekly = new() { Hours = [SmallRoom.Area.Weekly!.Hours[0] with { Off = new LocalTime(6, 0).PlusSeconds((long)(43_200 * hours)) }] } }],
            Options = [wire with
            {
                Measures = [new("line", new DirectWire("tube")) { PartsPerLuminaire = Money.FromUnits(16 * cost), LabourPerLuminaire = OperatingTime.FromMinutes(27 * cost) }],
                Costs = wire.Costs with { DisposalPerLamp = Money.FromUnits(1 * cost), DisposalPerBallast = Money.FromUnits(2.5 * cost) },
            }],
            Catalogue = study.Catalogue with
            {
                SetUps = [SmallRoom.SetUp with { TestedPower = Power.FromWatts(60 * old) }],
                Lamps = [SmallRoom.Lamp with { Lives = [.. SmallRoom.Lamp.Lives.Select(row => row with { Life = row.Life * oldLife })] }],
                Ballasts = [SmallRoom.Ballast with { RatedLife = SmallRoom.Ballast.RatedLife * oldLife }],
                Tubes = [SmallRoom.Tube with { LinePower = Power.FromWatts(15 * watts), RatedLife = SmallRoom.Tube.RatedLife * newLife }],
            },
        };
    }
}
