using RetrofitCalc.Data;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Reports;

namespace RetrofitCalc.Web.Shared;

/// <summary>The few figures the list of studies shows without evaluating each study again.</summary>
public static class Headline
{
    /// <summary>Null when there is no result of the study as it stands.</summary>
    public static StudyHeadlineFigures? Of(StudyResult? result, bool stale)
    {
        if (result is null || stale) return null;
        var option = result.Chosen;
        var (caseNow, caseAfter) = (result.Now, option?.After ?? result.Now);
        var (now, after) = (caseNow.Site, caseAfter.Site);
        return new StudyHeadlineFigures(
            now.Connected, after.Connected, PrintedSums.Cost(caseNow), PrintedSums.Cost(caseAfter), option?.SimplePayback.Years,
            result.Notices.Count(n => n is { Severity: NoticeSeverity.Stop, Open: true }))
        {
            Currency = result.Study.Tariff.Currency,
            Culture = result.Study.Site.Culture,
            OptionName = option?.Option.Name ?? "",
            EnergyNow = now.Lighting + now.Plant,
            EnergyProposed = after.Lighting + after.Plant,
            PaybackLow = option?.Ranges.Payback.Low,
            PaybackHigh = option?.Ranges.Payback.High,
        };
    }
}
