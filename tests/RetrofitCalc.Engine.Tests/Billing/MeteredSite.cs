using NodaTime;
using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Samples;
using RetrofitCalc.Engine.Uncertainty;

namespace RetrofitCalc.Engine.Tests.Billing;

/// <summary>A site with a meter and nothing else, billed as studies are.</summary>
internal static class MeteredSite
{
    public static Study Of(Tariff tariff, string zone, double powerFactor, MeterYear meter) => SampleStudy.Small with
    {
        Site = SampleStudy.Small.Site with { TimeZone = zone, PowerFactor = powerFactor }, Lines = [], Options = [], Tariff = tariff, Meter = meter,
    };

    public static IReadOnlyList<MonthlyBill> Bills(Study study, double priceFactor = 1) => CaseEvaluation.Evaluate(
        new(study), CaseEvaluation.Now, new Dictionary<string, Measure>(), null, Perturbation.None with { ElectricityPrice = priceFactor }).Bills;

    /// <summary>Loads of 0 to 65 kW in whole watts, anew in each interval.</summary>
    public static MeterYear Meter(LocalDate[] dates, string zone, int minutes, uint seed)
    {
        var (site, state) = (DateTimeZoneProviders.Tzdb[zone], seed);
        var length = site.AtStartOfDay(dates[^1]).ToInstant() - site.AtStartOfDay(dates[0]).ToInstant();
        return SampleMeter.Of(dates[0], minutes, [.. Enumerable.Range(0, (int)Math.Ceiling(length.TotalMinutes / minutes)).Select(_ =>
        {
            state = unchecked(state * 1664525u + 1013904223u);
            return (state >> 16) / 1000.0;
        })]);
    }
}
