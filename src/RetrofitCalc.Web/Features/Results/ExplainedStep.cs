using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tracing;
using RetrofitCalc.Reports;

namespace RetrofitCalc.Web.Features.Results;

/// <summary>One step of how a figure came about, as text.</summary>
public sealed record ExplainedStep(string Name, string Formula, string Inputs, string Result, string Source)
{
    /// <summary>The steps the engine recorded while it computed the figure again.</summary>
    public static IReadOnlyList<ExplainedStep> Of(Study study, ExplainedFigure figure, string? line, string? option) =>
        Said(StudyExplanation.Of(study, figure, line, option), QuantityText.For(study));

    /// <summary>The steps that lead to the light of a stage.</summary>
    public static IReadOnlyList<ExplainedStep> OfLight(Study study, StageLight stage, string? option) =>
        Said(LightExplanation.Of(study, stage.Area, (stage.Season, stage.Stage), option), QuantityText.For(study));

    private static IReadOnlyList<ExplainedStep> Said(IReadOnlyList<TraceStep> steps, QuantityText text) =>
        [.. steps.Select(step => new ExplainedStep(
            step.Name, step.Formula, string.Join("; ", step.Inputs.Select(input => $"{input.Name} = {Value(input, text)}")), Value(step.Result, text), step.Source))];

    /// <summary>Whole numbers as such, others with as many decimals as tell them apart.</summary>
    private static string Value(TraceValue value, QuantityText text)
    {
        if (value.Unit == "currency") return text.Cents(Engine.Quantities.Money.FromUnits(value.Value));
        var decimals = Math.Abs(value.Value) switch { >= 1000 => 0, >= 100 => 1, >= 1 => 2, _ => 4 };
        return $"{text.Number(value.Value, value.Value == Math.Round(value.Value) ? 0 : decimals)}{(value.Unit.Length > 0 ? $"\u00A0{value.Unit}" : "")}";
    }
}
