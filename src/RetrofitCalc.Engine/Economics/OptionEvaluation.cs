using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Uncertainty;

namespace RetrofitCalc.Engine.Economics;

/// <summary>An option against keeping the lighting.</summary>
public static class OptionEvaluation
{
    /// <summary>Evaluates an option, its ranges included. All options of a study share the present lighting's cases.</summary>
    /// <param name="now">The present lighting.</param>
    /// <param name="option">The option.</param>
    public static OptionResult Run(PresentCases now, RetrofitOption option)
    {
        var assumptions = now.Context.Study.Assumptions;
        var model = new OptionModel(now, option);
        var likely = model.Under(Perturbation.None);
        var (light, equal) = CropLightEvaluation.WithFactors(now.Context, [.. now.Context.Lines.Select(line => line.Fitted)], model.Fitted, option);
        return new OptionResult
        {
            Option = option,
            After = model.After,
            FirstCost = likely.FirstCost,
            CashFlow = likely.Flows,
            SimplePayback = likely.SimplePayback,
            PlainPayback = PaybackTime.Plain(likely.FirstCost.Total, likely.Saving.Steady, assumptions.StudyYears),
            DiscountedPayback = likely.DiscountedPayback(assumptions),
            NetPresentValue = likely.NetPresentValue,
            InternalRates = RateOfReturn.All(likely.Net),
            AnnualBillSaving = likely.Saving.Steady,
            FirstYearBillSaving = likely.Saving.FirstYear,
            Bill = model.Bill(),
            Ranges = OptionSwings.Of(model, likely, assumptions),
            Light = light,
            AtEqualLight = model.AtEqualLight(equal, likely),
            Refused = model.Refused,
        };
    }
}
