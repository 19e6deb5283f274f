using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Uncertainty;

/// <summary>An input that may be off, and what would settle it.</summary>
/// <param name="Number">A number it keeps for good: its random numbers follow from it.</param>
/// <param name="Key">Name of the factor in <see cref="Perturbation"/>.</param>
/// <param name="Name">The input in plain words.</param>
/// <param name="Ask">What would settle it, in plain words.</param>
internal sealed record UncertainInput(int Number, string Key, string Name, string Ask)
{
    /// <summary>How far it may be off. [unitless, 0–0.9]</summary>
    public required Func<Assumptions, double> Width { get; init; }

    /// <summary>Other inputs, with this one multiplied by a factor.</summary>
    public required Func<Perturbation, double, Perturbation> With { get; init; }

    /// <summary>Whether it is a life: what shortens one life, such as heat or many starts, shortens others.</summary>
    public bool IsLife { get; init; }

    /// <summary>All inputs likely but this one.</summary>
    /// <param name="factor">Factor on it. [unitless, above 0]</param>
    public Perturbation At(double factor) => With(Perturbation.None, factor);

    public static IReadOnlyList<UncertainInput> All { get; } =
    [
        new(0, nameof(Perturbation.ExistingWatts), "Watts of the present luminaires", "Measure one luminaire of each kind.")
        { Width = a => a.WattsUncertainty, With = (all, factor) => all with { ExistingWatts = factor } },
        new(1, nameof(Perturbation.ProposedWatts), "Watts of the new tubes or luminaires", "Measure one sample before you order.")
        { Width = a => a.WattsUncertainty, With = (all, factor) => all with { ProposedWatts = factor } },
        new(2, nameof(Perturbation.ElectricityPrice), "Price of electricity", "Take the price from twelve bills.")
        { Width = a => a.PriceUncertainty, With = (all, factor) => all with { ElectricityPrice = factor } },
        new(3, nameof(Perturbation.Hours), "Hours lit", "Read the timers, or log one circuit for two weeks.")
        { Width = a => a.HoursUncertainty, With = (all, factor) => all with { Hours = factor } },
        new(4, nameof(Perturbation.FirstCost), "First cost", "Get one written offer.")
        { Width = a => a.FirstCostUncertainty, With = (all, factor) => all with { FirstCost = factor } },
        new(5, nameof(Perturbation.FluorescentLife), "Life of lamps and ballasts", "Look up when lamps and ballasts were last changed.")
        { Width = a => a.LifeUncertainty, With = (all, factor) => all with { FluorescentLife = factor }, IsLife = true },
        new(6, nameof(Perturbation.ReplacementLife), "Life of the new tubes or luminaires", "Ask the supplier for test hours and a written warranty.")
        { Width = a => a.LifeUncertainty, With = (all, factor) => all with { ReplacementLife = factor }, IsLife = true },
    ];
}
