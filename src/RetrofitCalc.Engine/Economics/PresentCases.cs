using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Uncertainty;

namespace RetrofitCalc.Engine.Economics;

/// <summary>The present lighting under every set of inputs asked for, worked out once and shared by all options.</summary>
public sealed class PresentCases
{
    private static readonly Dictionary<string, Measure> Kept = [];

    private readonly CasePlan _plan;
    private readonly Lazy<LightingCase> _likely;
    private readonly Recent<Perturbation, CaseTotals> _totals;

    /// <summary>Resolves the present lighting.</summary>
    /// <param name="context">The study's context.</param>
    public PresentCases(StudyContext context)
    {
        Context = context;
        _plan = new(context, CaseEvaluation.Now, Kept, null);
        _likely = new(() => _plan.Evaluate(Perturbation.None));
        _totals = new(perturbation => _plan.Totals(perturbation));
        Fitted = _plan.Fitted.ToDictionary(line => line.Line.Id);
    }

    /// <summary>The study's context.</summary>
    public StudyContext Context { get; }

    /// <summary>What is fitted now, by id of the survey line.</summary>
    public IReadOnlyDictionary<string, FittedLine> Fitted { get; }

    /// <summary>The present lighting in full, likely case.</summary>
    public LightingCase Likely() => _likely.Value;

    /// <summary>The present lighting's sums under some inputs.</summary>
    /// <param name="perturbation">Factors on uncertain inputs.</param>
    public CaseTotals Under(Perturbation perturbation) => _totals.Of(perturbation);
}
