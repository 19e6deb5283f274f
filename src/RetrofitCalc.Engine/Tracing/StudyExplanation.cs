using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Tracing;

/// <summary>Figures that can be explained.</summary>
public enum ExplainedFigure
{
    /// <summary>Input of one luminaire of a line. [W]</summary>
    InputPower,
    /// <summary>Connected power of a line, or of all. [W]</summary>
    Connected,
    /// <summary>Heat while on, within the conditioned space, of a line, or of all. [BTU/h]</summary>
    Heat,
    /// <summary>Lighting energy in the year of a line, or of all. [kWh]</summary>
    YearlyEnergy,
    /// <summary>Yearly cost of a line, or of the site. [currency]</summary>
    YearlyCost,
}

/// <summary>Answers "where does this figure come from?" by computing it again with a recorder.</summary>
public static class StudyExplanation
{
    /// <summary>Steps that lead to a figure, the figure last.</summary>
    /// <param name="study">A study without problems.</param>
    /// <param name="figure">The figure.</param>
    /// <param name="line">Id of the survey line; null for the whole site. The input of one luminaire needs a line.</param>
    /// <param name="option">Id of the option; null for the present lighting.</param>
    /// <exception cref="ArgumentException">No such option, or the line is not counted.</exception>
    public static IReadOnlyList<TraceStep> Of(Study study, ExplainedFigure figure, string? line = null, string? option = null)
    {
        var trace = new Trace();
        CaseExplanation.Record(PlanOf(new(study), option), figure, line, trace);
        return trace.Steps;
    }

    private static CasePlan PlanOf(StudyContext context, string? optionId)
    {
        if (optionId is null)
            return new(context, CaseEvaluation.Now, new Dictionary<string, Measure>(), null);
        var option = context.Study.Options.FirstOrDefault(o => o.Id == optionId)
            ?? throw new ArgumentException($"The study has no option {optionId}.", nameof(optionId));
        return CasePlan.After(context, option);
    }
}
