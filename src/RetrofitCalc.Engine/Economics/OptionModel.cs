using NodaTime;
using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Uncertainty;

namespace RetrofitCalc.Engine.Economics;

/// <summary>One option as a function of its uncertain inputs: bills, replacements and first cost worked out anew for each.</summary>
internal sealed class OptionModel
{
    private readonly PresentCases _now;
    private readonly RetrofitOption _option;
    private readonly Dictionary<string, Measure> _measures;
    private readonly FirstCost _gross;
    private readonly Money _incentiveByLuminaire;
    private readonly double _longestHours;

    public OptionModel(PresentCases now, RetrofitOption option)
    {
        _now = now;
        _option = option;
        _measures = option.Measures.ToDictionary(measure => measure.Line, measure => measure.Measure);
        var fitted = FittedLines.Of(now.Context, _measures, out var refused);
        Refused = refused;
        _gross = FirstCosts.Gross(now.Fitted, fitted, option);
        _incentiveByLuminaire = FirstCosts.IncentiveByLuminaire(fitted, option);
        After = Evaluate(Perturbation.None);
        _longestHours = LongestHours();
    }

    /// <summary>Measures that do not fit their lines.</summary>
    public IReadOnlyList<RefusedMeasure> Refused { get; }

    /// <summary>The lighting after the change, likely case.</summary>
    public LightingCase After { get; }

    private Assumptions Assumptions => _now.Context.Study.Assumptions;

    /// <summary>The money under some inputs.</summary>
    public OptionOutcome Under(Perturbation perturbation)
    {
        var inModel = perturbation with { FirstCost = 1, Hours = Math.Min(perturbation.Hours, _longestHours) };
        var now = _now.Under(inModel with { ProposedWatts = 1, ReplacementLife = 1 });
        var after = inModel == Perturbation.None ? After : Evaluate(inModel);
        var firstCost = FirstCosts.Net(_gross, perturbation.FirstCost, Incentive(now, after), _option.Costs.IncentiveCap);
        var saving = now.Site.Cost - after.Site.Cost;
        return new OptionOutcome(firstCost, saving, CashFlows.Of(firstCost.Total, saving, Maintenance(now, after), Assumptions));
    }

    /// <summary>Factor at which the line lit longest would burn all year: no light burns longer.</summary>
    private double LongestHours()
    {
        var year = Period.DaysBetween(new LocalDate(Assumptions.Start.Year, 1, 1), new LocalDate(Assumptions.Start.Year + 1, 1, 1)) * 24.0;
        var busiest = After.Lines.Select(line => line.Hours.Hours).DefaultIfEmpty(0).Max();
        return busiest > 0 ? Math.Max(1, year / busiest) : double.PositiveInfinity;
    }

    private LightingCase Evaluate(Perturbation perturbation) =>
        CaseEvaluation.Evaluate(_now.Context, _option.Name, _measures, _option.Costs, perturbation);

    private Money[] Maintenance(LightingCase now, LightingCase after)
    {
        var made = CashFlows.ByYear(after.Replacements, Assumptions.StudyYears);
        return [.. CashFlows.ByYear(now.Replacements, Assumptions.StudyYears).Select((avoided, year) => avoided - made[year])];
    }

    /// <summary>Incentive before its cap; by kilowatt-hour of lighting saved, plant left out.</summary>
    private Money Incentive(LightingCase now, LightingCase after)
    {
        var savedKilowattHours = Math.Max(0, now.Site.Lighting.KilowattHours - after.Site.Lighting.KilowattHours);
        return _incentiveByLuminaire + Money.FromUnits(_option.Costs.IncentivePerKilowattHour.PerKilowattHour * savedKilowattHours);
    }
}
