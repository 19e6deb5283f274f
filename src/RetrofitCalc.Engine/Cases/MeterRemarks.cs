using RetrofitCalc.Engine.Checks;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Cases;

/// <summary>What the bills rest on: the meter, or a stated base load.</summary>
internal static class MeterRemarks
{
    /// <summary>The remarks of a study.</summary>
    /// <param name="context">The study's context.</param>
    public static IEnumerable<string> Of(StudyContext context) => (context.Study.Meter, context.Comparison) is ({ } meter, { } comparison)
        ? [.. OfReadings(meter, context), .. OfSurvey(comparison), .. OfPrecision(meter, context)]
        : [OfBaseLoad(context.Study.Site)];

    private static string OfBaseLoad(Site site) => site.BaseLoad > Power.Zero
        ? $"Bills rest on a stated base load of {Problems.Text(site.BaseLoad.Kilowatts)} kW, day and night; effects on demand and price blocks are estimates until meter data are read."
        : "No base load is stated: the lighting is billed as if it were alone on the meter, so effects on demand and price blocks are estimates.";

    private static IEnumerable<string> OfReadings(MeterYear meter, StudyContext context)
    {
        yield return $"Bills rest on the readings of {meter.Name} every {meter.IntervalMinutes} minutes from {CheckText.Date(context.Year.FirstDay)} to {CheckText.Date(context.Year.LastDay)}: the present bill is the metered load's, a later one that load less the lighting and plant taken away.";
        if (context.Study.Site.BaseLoad > Power.Zero)
            yield return "The stated base load is not used, because the meter shows it.";
    }

    private static IEnumerable<string> OfSurvey(MeterComparison comparison)
    {
        if (comparison.Filled > 0)
            yield return $"{comparison.Filled} of {comparison.Intervals} readings were missing and have been filled.";
        if (comparison.IntervalsExceeded > 0)
            yield return $"The surveyed lighting and its plant draw more than the meter shows in {comparison.IntervalsExceeded} of {comparison.Intervals} intervals, by up to {Problems.Text(comparison.LargestExcess.Kilowatts)} kW: check counts, watts and hours of the survey.";
    }

    private static IEnumerable<string> OfPrecision(MeterYear meter, StudyContext context)
    {
        var shortest = context.Study.Tariff.Demand.Select(charge => charge.WindowMinutes).DefaultIfEmpty(60).Min();
        if (meter.IntervalMinutes > shortest)
            yield return $"Readings of {meter.IntervalMinutes} minutes are longer than a demand window of {shortest} minutes: true peaks may be higher.";
        if (meter.Watts.Count(watts => watts < 0) is > 0 and var sent)
            yield return $"The site sends energy out in {sent} {(sent == 1 ? "reading" : "readings")}: within a month and price it is set off against what is drawn, and what still lies below zero is billed as zero. Other rules for energy sent out are not modelled.";
    }
}
