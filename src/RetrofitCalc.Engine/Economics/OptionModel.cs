using RetrofitCalc.Engine.Billing;
using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.CropLight;
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
    private readonly CasePlan _plan;
    private readonly FirstCost _gross;
    private readonly Money _incentiveByLuminaire;
    private readonly Lazy<LightingCase> _after;

    public OptionModel(PresentCases now, RetrofitOption option)
        : this(now, option, CasePlan.After(now.Context, option))
    {
    }

    private OptionModel(PresentCases now, RetrofitOption option, CasePlan plan)
    {
        (_now, _option, _plan) = (now, option, plan);
        _gross = FirstCosts.Gross(now.Fitted, _plan.Fitted, option);
        _incentiveByLuminaire = FirstCosts.IncentiveByLuminaire(_plan.Fitted, option);
        _after = new(() => _plan.Evaluate(Perturbation.None));
    }

    /// <summary>What is fitted on each counted line after the change.</summary>
    public IReadOnlyList<FittedLine> Fitted => _plan.Fitted;

    /// <summary>Measures that do not fit their lines.</summary>
    public IReadOnlyList<RefusedMeasure> Refused => _plan.Refused;

    /// <summary>The lighting after the change, likely case.</summary>
    public LightingCase After => _after.Value;

    /// <summary>What it saves on the bill, line by line, likely case.</summary>
    public BillSaving Bill()
    {
        var now = _now.Likely();
        return BillSavings.Of(now.Bills, _plan.FirstYearBills(), After.Bills, now.MeterEnergy, now.MeterEnergy - After.MeterEnergy);
    }

    /// <summary>The option with as much light as now (E-76).</summary>
    /// <param name="luminaires">Luminaires for each one of the option, and areas whose light is not known.</param>
    /// <param name="likely">Its likely outcome.</param>
    public EqualLight AtEqualLight(EqualLuminaires luminaires, OptionOutcome likely)
    {
        var differs = luminaires.Factors.Values.Any(factor => Math.Abs(factor - 1) > EqualLight.LeastDifference);
        var model = differs ? new OptionModel(_now, _option, _plan.WithLuminaires(luminaires.Factors)) : this;
        var outcome = differs ? model.Under(Perturbation.None) : likely;
        return new(outcome.Saving.Steady, outcome.FirstCost.Total, outcome.SimplePayback, model._plan.Connected, differs)
        {
            Without = luminaires.Without,
            Known = luminaires.Factors.Count > 0 || luminaires.Without.Count == 0,
        };
    }

    private Assumptions Assumptions => _now.Context.Study.Assumptions;

    /// <summary>The money under some inputs.</summary>
    public OptionOutcome Under(Perturbation perturbation)
    {
        var inModel = perturbation with { FirstCost = 1 };
        var now = _now.Under(inModel with { ProposedWatts = 1, ReplacementLife = 1 });
        var after = _plan.Totals(inModel);
        var firstCost = FirstCosts.Net(_gross, perturbation.FirstCost, Incentive(now, after), _option.Costs.IncentiveCap);
        var saving = new YearlySaving(now.Cost - after.FirstYearCost, now.Cost - after.Cost);
        return new OptionOutcome(firstCost, saving, CashFlows.Of(firstCost.Total, saving, Maintenance(now, after), Assumptions));
    }

    private static Money[] Maintenance(CaseTotals now, CaseTotals after) =>
        [.. now.Replacements.Zip(after.Replacements, (avoided, made) => avoided - made)];

    /// <summary>Incentive before its cap; by kilowatt-hour of lighting saved, plant left out.</summary>
    private Money Incentive(CaseTotals now, CaseTotals after)
    {
        var savedKilowattHours = Math.Max(0, now.Lighting.KilowattHours - after.Lighting.KilowattHours);
        return _incentiveByLuminaire + Money.FromUnits(_option.Costs.IncentivePerKilowattHour.PerKilowattHour * savedKilowattHours);
    }
}
