using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Economics.Measures;

/// <summary>An option that could be done now or later. Amounts at prices of the start.</summary>
/// <param name="FirstCost">First cost after incentive; an incentive that ends meanwhile must be left out by the caller.</param>
/// <param name="FirstYearSaving">Bill and fuel saved in the first year after the change.</param>
/// <param name="SteadySaving">Bill and fuel saved in every later year.</param>
/// <param name="Kept">Replacements of the present lighting by year of the study, year 1 first.</param>
/// <param name="Changed">Replacements of the new lighting by year after the change, year 1 first.</param>
public sealed record DeferrableOption(
    Money FirstCost, Money FirstYearSaving, Money SteadySaving, IReadOnlyList<Money> Kept, IReadOnlyList<Money> Changed);

/// <summary>What waiting costs: worth of doing it now less worth of doing it later (E-98).</summary>
/// <remarks>
/// The study ends on the same day, so a late start has fewer years to earn. First cost and replacements rise with
/// <see cref="Assumptions.CostEscalation"/>, savings with <see cref="Assumptions.EnergyEscalation"/>, as in E-14. Until the change the
/// present lighting is kept up at its own cost. Waiting may pay: where a year's saving is less than a year's interest on first cost.
/// </remarks>
public static class CostOfWaiting
{
    /// <summary>Net present value of the option done after some years.</summary>
    /// <param name="option">The option.</param>
    /// <param name="wait">Years waited. [count, 0 to the years of the study]</param>
    /// <param name="assumptions">Rates.</param>
    /// <exception cref="ArgumentOutOfRangeException">The wait is longer than the study.</exception>
    public static Money Worth(DeferrableOption option, int wait, Assumptions assumptions)
    {
        Require.InRange(wait, 0, option.Kept.Count);
        var flows = new Money[option.Kept.Count + 1];
        for (var year = wait + 1; year <= option.Kept.Count; year++)
        {
            var saving = year == wait + 1 ? option.FirstYearSaving : option.SteadySaving;
            flows[year] = saving * Math.Pow(1 + assumptions.EnergyEscalation, year - 1)
                + (option.Kept[year - 1] - option.Changed[year - wait - 1]) * Math.Pow(1 + assumptions.CostEscalation, year - 1);
        }
        flows[wait] -= option.FirstCost * Math.Pow(1 + assumptions.CostEscalation, wait);
        return PresentValue.Of(assumptions.DiscountRate, flows);
    }

    /// <summary>What waiting costs; negative when it pays to wait.</summary>
    /// <param name="option">The option.</param>
    /// <param name="wait">Years waited. [count]</param>
    /// <param name="assumptions">Rates.</param>
    public static Money Of(DeferrableOption option, int wait, Assumptions assumptions) =>
        Worth(option, 0, assumptions) - Worth(option, wait, assumptions);
}
