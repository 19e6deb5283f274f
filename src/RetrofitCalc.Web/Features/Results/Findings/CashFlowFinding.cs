using RetrofitCalc.Engine.Results;
using RetrofitCalc.Reports;

namespace RetrofitCalc.Web.Features.Results.Findings;

/// <summary>Title of the cash-flow drawing: when the money is back.</summary>
public static class CashFlowFinding
{
    public static string Sentence(OptionResult option, QuantityText text)
    {
        var years = option.CashFlow.Count - 1;
        return option.SimplePayback switch
        {
            { Years: null } => $"The money does not come back in {years} years; {text.Money(-option.CashFlow[^1].Cumulative)} is still missing",
            { Years: { } at, LostAgain: true } => $"The money is back in {text.Number(at, 1)} years, and lost again for a time later on",
            { Years: 0 } => "There is no money to win back: nothing is spent at the start",
            { Years: { } at } => $"The money is back in {text.Number(at, 1)} years",
        };
    }
}
