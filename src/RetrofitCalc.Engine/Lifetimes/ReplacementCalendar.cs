using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Lifetimes;

/// <summary>Parts falling due within the study period.</summary>
public static class ReplacementCalendar
{
    /// <summary>The replacements of one line, by date.</summary>
    /// <param name="fitted">The line and what is fitted.</param>
    /// <param name="clocks">Its clocks.</param>
    /// <param name="assumptions">Policies and rates.</param>
    /// <param name="costs">Rates of the option; null for the lighting kept as it is.</param>
    public static IReadOnlyList<ReplacementEvent> Of(
        FittedLine fitted, IReadOnlyList<WearClock> clocks, Assumptions assumptions, OptionCosts? costs) => [];
}
