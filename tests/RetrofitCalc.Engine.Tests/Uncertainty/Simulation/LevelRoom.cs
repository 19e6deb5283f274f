using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Examples;
using RetrofitCalc.Engine.Uncertainty.Simulation;

namespace RetrofitCalc.Engine.Tests.Uncertainty.Simulation;

/// <summary>
/// The small room a hundred times over, at a flat price and with nothing ever falling due: worth is a sum of products of the inputs. With
/// f for price, hours, watts now, watts after and first cost: bill saved 26,280 f_p f_h f_e − 13,140 f_p f_h f_a, first cost 64,625 f_c.
/// </summary>
internal static class LevelRoom
{
    public const double FirstCost = 64_625, Saving = 13_140;

    public static Assumptions Sure { get; } = new()
    {
        WattsUncertainty = 0, PriceUncertainty = 0, HoursUncertainty = 0, FirstCostUncertainty = 0, LifeUncertainty = 0,
    };

    public static Study Level { get; } = SmallRoom.Study with
    {
        Lines = [SmallRoom.Line with { Count = 1_000 }],
        Catalogue = SmallRoom.Study.Catalogue with
        {
            Lamps = [SmallRoom.Lamp with { Lives = [] }],
            Ballasts = [SmallRoom.Ballast with { RatedLife = null }],
            Tubes = [SmallRoom.Tube with { RatedLife = null, TestHours = null }],
        },
    };

    /// <summary>Worth of 1 a year at 2 % escalation and 5 % for ten years: 8.388.</summary>
    public static double YearsWorth { get; } = Enumerable.Range(1, 10).Sum(year => Math.Pow(1.02, year - 1) / Math.Pow(1.05, year));

    public static SimulationResult Draw(Study study, Assumptions assumptions, SimulationSettings? settings = null, SimulationControl? control = null) =>
        OptionSimulation.Run(study with { Assumptions = assumptions }, study.Options[0], settings ?? new(), control ?? new());

    public static SimulationResult Draw(Assumptions assumptions, SimulationSettings? settings = null) => Draw(Level, assumptions, settings);
}
