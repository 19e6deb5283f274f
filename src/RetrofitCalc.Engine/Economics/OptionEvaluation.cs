using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Uncertainty;

namespace RetrofitCalc.Engine.Economics;

/// <summary>An option against keeping the lighting.</summary>
public static class OptionEvaluation
{
    /// <summary>Evaluates an option, its ranges included.</summary>
    /// <param name="context">The study's context.</param>
    /// <param name="now">The present lighting.</param>
    /// <param name="option">The option.</param>
    public static OptionResult Run(StudyContext context, LightingCase now, RetrofitOption option) =>
        Run(new PresentCases(context, now), option);

    /// <summary>Evaluates an option, sharing the present lighting's cases with other options.</summary>
    /// <param name="now">The present lighting.</param>
    /// <param name="option">The option.</param>
    public static OptionResult Run(PresentCases now, RetrofitOption option)
    {
        var assumptions = now.Context.Study.Assumptions;
        var model = new OptionModel(now, option);
        var likely = model.Under(Perturbation.None);
        return new OptionResult
        {
            Option = option,
            After = model.After,
            FirstCost = likely.FirstCost,
            CashFlow = likely.Flows,
            SimplePayback = likely.SimplePayback,
            PlainPayback = PaybackTime.Plain(likely.FirstCost.Total, likely.AnnualSaving, assumptions.StudyYears),
            DiscountedPayback = likely.DiscountedPayback(assumptions),
            NetPresentValue = likely.NetPresentValue,
            InternalRates = RateOfReturn.All(likely.Net),
            AnnualBillSaving = likely.AnnualSaving,
            Ranges = OptionSwings.Of(model, likely, assumptions),
            Refused = model.Refused,
        };
    }
}
