using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Reports;

/// <summary>The highest window behind one demand charge in one month, and the lights' own part of it.</summary>
/// <param name="Name">Month, and the charge where there are several.</param>
/// <param name="Now">Present peak.</param>
/// <param name="After">Peak after the change; null where the charge is then not in force.</param>
internal sealed record BilledPeak(string Name, DemandPeak Now, DemandPeak? After)
{
    /// <summary>Heads of its five columns.</summary>
    public static IReadOnlyList<string> Heads { get; } = ["Month", "Meter now, kW", "of it lights now, kW", "Meter after, kW", "of it lights after, kW"];

    /// <summary>Whole meter now, lights now, whole meter after, lights after.</summary>
    public IReadOnlyList<Power?> Values => [Now.Total, Now.Lighting, After?.Total, After?.Lighting];

    public static IReadOnlyList<BilledPeak> Of(StudyResult result, OptionResult option, QuantityText text)
    {
        var after = option.After.Peaks.ToDictionary(peak => (peak.Month, peak.Charge));
        var charges = result.Study.Tariff.Demand;
        string Name(DemandPeak peak) => text.Month(peak.Month.OnDayOfMonth(1)) + (charges.Count > 1 ? ", " + charges[peak.Charge].Name : "");
        return [.. result.Now.Peaks.OrderBy(peak => peak.Month).ThenBy(peak => peak.Charge)
            .Select(now => new BilledPeak(Name(now), now, after.GetValueOrDefault((now.Month, now.Charge))))];
    }
}
