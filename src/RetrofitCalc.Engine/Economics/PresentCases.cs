using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Uncertainty;

namespace RetrofitCalc.Engine.Economics;

/// <summary>The present lighting under every set of inputs asked for, each worked out once and shared by all options.</summary>
public sealed class PresentCases
{
    private static readonly Dictionary<string, Measure> Kept = [];

    private readonly Dictionary<Perturbation, LightingCase> _cases = [];

    /// <summary>Starts with the likely case.</summary>
    /// <param name="context">The study's context.</param>
    /// <param name="now">The present lighting, likely case.</param>
    public PresentCases(StudyContext context, LightingCase now)
    {
        Context = context;
        _cases[Perturbation.None] = now;
        Fitted = FittedLines.Of(context, Kept, out _).ToDictionary(line => line.Line.Id);
    }

    /// <summary>The study's context.</summary>
    public StudyContext Context { get; }

    /// <summary>What is fitted now, by id of the survey line.</summary>
    public IReadOnlyDictionary<string, FittedLine> Fitted { get; }

    /// <summary>The present lighting under some inputs.</summary>
    /// <param name="perturbation">Factors on uncertain inputs.</param>
    public LightingCase Under(Perturbation perturbation)
    {
        if (!_cases.TryGetValue(perturbation, out var found))
            _cases[perturbation] = found = CaseEvaluation.Evaluate(Context, _cases[Perturbation.None].Name, Kept, null, perturbation);
        return found;
    }
}
