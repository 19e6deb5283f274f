using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Reports;

namespace RetrofitCalc.Web.Features.Results.Findings;

/// <summary>Title of the watts drawing: what share of the load the ballasts take.</summary>
public static class WattsFinding
{
    public static string Sentence(StudyResult result, QuantityText text)
    {
        var site = result.Now.Site;
        if (site.Connected > Power.Zero && site.BallastLoss > Power.Zero)
            return $"Ballasts take {AtLeast(result)}{text.Percent(site.BallastLoss / site.Connected)} of the load and give no light";
        return result.Chosen is { } option
            ? $"“{option.Option.Name}” takes the load from {text.Kilowatts(site.Connected)} to {text.Kilowatts(option.After.Site.Connected)}"
            : $"The lights draw {text.Kilowatts(site.Connected)}";
    }

    /// <summary>Lines whose loss nobody knows are left out of the sum, so the share can only be higher.</summary>
    private static string AtLeast(StudyResult result) => result.Now.Lines.Any(l => l.BallastLoss is null) ? "at least " : "";
}
