using NodaTime;
using RetrofitCalc.Engine.Metering;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Web.Features.Meter;

/// <summary>Twelve-month spans of readings that hold twelve whole billing months of the tariff, newest first.</summary>
public static class BillingSpans
{
    private const double LeastKnown = 0.75;
    private const int MonthsOfYear = 12;

    public static IReadOnlyList<MeterSpan> Of(CleanedMeter cleaned, Tariff tariff, DateTimeZone zone)
    {
        if (cleaned is not { FirstDay: { } first, LastDay: { } last }) return [];
        List<MeterSpan> spans = [.. Starts(tariff.Reading, first, last).Distinct().OrderDescending()
            .Select(start => SpanFrom(cleaned, start, zone)).Where(span => span.KnownShare >= LeastKnown)];
        var whole = spans.Where(span => span.First >= first && span.Last <= last).ToList();
        // Partly covered spans are offered only where none lies wholly within the readings: they would be filled for weeks.
        return whole.Count > 0 ? whole : [.. spans.OrderBy(span => span.Missing).Take(MonthsOfYear)];
    }

    /// <summary>The newest, each whole years before it, the first, and calendar years where bills follow the calendar.</summary>
    private static IEnumerable<LocalDate> Starts(MeterReading reading, LocalDate first, LocalDate last)
    {
        if (reading.Dates.Count > 0)
            return Enumerable.Range(first.Year - reading.Dates[0].Year, last.Year - first.Year + 1).Select(reading.Dates[0].PlusYears);
        List<LocalDate> days = [.. MonthStarts(reading.DayOfMonth, first.PlusMonths(-MonthsOfYear / 4), last)];
        List<LocalDate> inside = [.. days.Where(day => day >= first && day.PlusYears(1) <= last.PlusDays(1))];
        if (inside.Count == 0) return days;
        return inside.Where((day, i) => i == 0 || (inside.Count - 1 - i) % MonthsOfYear == 0 || (day.Month == 1 && day.Day == 1));
    }

    private static IEnumerable<LocalDate> MonthStarts(int dayOfMonth, LocalDate from, LocalDate to)
    {
        for (var day = new LocalDate(from.Year, from.Month, Math.Clamp(dayOfMonth, 1, 28)); day <= to; day = day.PlusMonths(1))
            yield return day;
    }

    private static MeterSpan SpanFrom(CleanedMeter cleaned, LocalDate first, DateTimeZone zone)
    {
        var year = cleaned.Year(first, "", Engine.Catalogue.Provenance.None);
        return new MeterSpan(first, MeterTimes.CountOf(first, year.IntervalMinutes, zone), year.Watts.Count(watts => watts is null));
    }
}
