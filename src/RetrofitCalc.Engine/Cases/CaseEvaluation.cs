using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Uncertainty;

namespace RetrofitCalc.Engine.Cases;

/// <summary>Evaluates one state of the lighting over the calendar year of the start.</summary>
public static class CaseEvaluation
{
    /// <summary>Name of the present lighting.</summary>
    public const string Now = "Now";

    /// <summary>Evaluates one state of the lighting.</summary>
    /// <param name="context">The study's context.</param>
    /// <param name="name">Name of the case: "Now", or the option's.</param>
    /// <param name="measures">What is done, by id of the survey line; lines not named are kept.</param>
    /// <param name="costs">Rates of the option; null for the lighting kept as it is.</param>
    /// <param name="perturbation">Factors on uncertain inputs.</param>
    public static LightingCase Evaluate(
        StudyContext context, string name, IReadOnlyDictionary<string, Measure> measures, OptionCosts? costs, Perturbation perturbation) =>
        new CasePlan(context, name, measures, costs).Evaluate(perturbation);

    /// <summary>Measures that do not fit their lines; such a line is kept as it is.</summary>
    /// <param name="context">The study's context.</param>
    /// <param name="measures">What is done, by id of the survey line.</param>
    public static IReadOnlyList<RefusedMeasure> Refusals(StudyContext context, IReadOnlyDictionary<string, Measure> measures)
    {
        FittedLines.Of(context, measures, out var refused);
        return refused;
    }
}
