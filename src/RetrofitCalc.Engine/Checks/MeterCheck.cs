using NodaTime;
using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Checks;

/// <summary>Whether the meter's readings can be billed: complete, on an even grid of whole days, and long enough for twelve billing months.</summary>
internal static class MeterCheck
{
    private const double LargestWatts = 1e9;
    private const int LongestDays = 400;

    public static void Run(Study study, Problems problems)
    {
        if (study.Meter is not { } meter)
            return;
        if (meter.IntervalMinutes is not (5 or 15 or 30 or 60))
            problems.Add("Meter.IntervalMinutes", $"The meter's interval is {meter.IntervalMinutes} minutes; it must be 5, 15, 30 or 60.");
        else if (meter.FirstDay.Year is < 1990 or > 2100)
            problems.Add("Meter.FirstDay", $"The meter's readings begin in the year {meter.FirstDay.Year}; it must be 1990 to 2100.");
        else if (DateTimeZoneProviders.Tzdb.GetZoneOrNull(study.Site.TimeZone) is { } zone)
            CheckSpan(study, meter, zone, problems);
        CheckGaps(meter, problems);
        CheckValues(meter, problems);
        foreach (var (index, gap) in meter.Filled.Index())
            if (gap.First < 0 || gap.Count < 1 || gap.First > meter.Watts.Count - gap.Count)
                problems.Add($"Meter.Filled[{index}]", $"A filled gap of {gap.Count} intervals from number {gap.First + 1} on is not within the {meter.Watts.Count} intervals.");
    }

    private static void CheckSpan(Study study, MeterYear meter, DateTimeZone zone, Problems problems)
    {
        var end = zone.AtStartOfDay(meter.FirstDay).ToInstant() + Duration.FromMinutes((long)meter.IntervalMinutes * Math.Min(meter.Watts.Count, 1_000_000));
        var next = end.InZone(zone).Date;
        if (zone.AtStartOfDay(next).ToInstant() != end || Period.DaysBetween(meter.FirstDay, next) is < 1 or > LongestDays)
        {
            problems.Add("Meter.Watts", $"There are {meter.Watts.Count} readings of {meter.IntervalMinutes} minutes; they must fill whole days, {LongestDays} at most (a year of 365 days has {365 * 1440 / meter.IntervalMinutes}).");
            return;
        }
        if (!IsSound(study.Tariff.Reading))
            return;
        var days = BillingYear.FirstDays(study);
        if (days[0] < meter.FirstDay || days[^1] > next)
            problems.Add("Meter.FirstDay", $"The meter's readings run from {CheckText.Date(meter.FirstDay)} to {CheckText.Date(next.PlusDays(-1))}, but the tariff's twelve billing months from {CheckText.Date(days[0])} to {CheckText.Date(days[^1].PlusDays(-1))}. Take readings that hold twelve whole billing months, or give the dates on which the meter was read.");
    }

    private static void CheckGaps(MeterYear meter, Problems problems)
    {
        var missing = meter.Watts.Count(watts => watts is null);
        if (missing == 0)
            return;
        var first = meter.Watts.Index().First(interval => interval.Item is null).Index;
        var day = meter.FirstDay.PlusDays((int)((long)first * meter.IntervalMinutes / 1440));
        problems.Add("Meter.Watts", $"{missing} of the meter's {meter.Watts.Count} intervals have no reading, the first around {CheckText.Date(day)}. Fill them on the meter page, or remove the meter data.");
    }

    private static void CheckValues(MeterYear meter, Problems problems)
    {
        foreach (var (index, watts) in meter.Watts.Index())
            if (watts is { } value && !(Math.Abs(value) <= LargestWatts))
            {
                problems.InRange($"Meter.Watts[{index}]", "A meter reading (watts)", value, -LargestWatts, LargestWatts);
                return;
            }
    }

    private static bool IsSound(MeterReading reading) => reading.Dates.Count == 0
        ? reading.DayOfMonth is >= 1 and <= 28
        : reading.Dates.Count == BillingYear.Months + 1 && reading.Dates.Zip(reading.Dates.Skip(1)).All(pair => pair.First < pair.Second);
}
