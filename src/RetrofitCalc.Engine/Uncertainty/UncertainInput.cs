using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Uncertainty;

/// <summary>An input that may be off, and what would settle it.</summary>
/// <param name="Key">Name of the factor in <see cref="Perturbation"/>.</param>
/// <param name="Name">The input in plain words.</param>
/// <param name="Ask">What would settle it, in plain words.</param>
/// <param name="Width">How far it may be off. [unitless, 0–0.9]</param>
/// <param name="At">The inputs with this one multiplied by a factor.</param>
internal sealed record UncertainInput(
    string Key, string Name, string Ask, Func<Assumptions, double> Width, Func<double, Perturbation> At)
{
    public static IReadOnlyList<UncertainInput> All { get; } =
    [
        new(nameof(Perturbation.ExistingWatts), "Watts of the present luminaires", "Measure one luminaire of each kind.",
            a => a.WattsUncertainty, factor => new() { ExistingWatts = factor }),
        new(nameof(Perturbation.ProposedWatts), "Watts of the new tubes or luminaires", "Measure one sample before you order.",
            a => a.WattsUncertainty, factor => new() { ProposedWatts = factor }),
        new(nameof(Perturbation.ElectricityPrice), "Price of electricity", "Take the price from twelve bills.",
            a => a.PriceUncertainty, factor => new() { ElectricityPrice = factor }),
        new(nameof(Perturbation.Hours), "Hours lit", "Read the timers, or log one circuit for two weeks.",
            a => a.HoursUncertainty, factor => new() { Hours = factor }),
        new(nameof(Perturbation.FirstCost), "First cost", "Get one written offer.",
            a => a.FirstCostUncertainty, factor => new() { FirstCost = factor }),
        new(nameof(Perturbation.FluorescentLife), "Life of lamps and ballasts", "Look up when lamps and ballasts were last changed.",
            a => a.LifeUncertainty, factor => new() { FluorescentLife = factor }),
        new(nameof(Perturbation.ReplacementLife), "Life of the new tubes or luminaires", "Ask the supplier for test hours and a written warranty.",
            a => a.LifeUncertainty, factor => new() { ReplacementLife = factor }),
    ];
}
