using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Cases;

/// <summary>What an option is judged by, without the detail.</summary>
/// <param name="Cost">Yearly cost of the site's lighting in a steady year: electricity of lighting and plant, less the fuel the lights' heat saves.</param>
/// <param name="FirstYearCost">The same in the first year after the present lighting, when a ratchet still remembers it.</param>
/// <param name="Lighting">Yearly lighting energy.</param>
/// <param name="Replacements">Replacements by year of the study, year 1 first, at prices of the start.</param>
public sealed record CaseTotals(Money Cost, Money FirstYearCost, Energy Lighting, IReadOnlyList<Money> Replacements);
