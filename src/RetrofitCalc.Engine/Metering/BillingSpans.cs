using NodaTime;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Metering;

/// <summary>Twelve-month spans of readings that hold twelve whole billing months, newest first.</summary>
public static class BillingSpans
{
    private const double LeastKnown = 0.75;
    private const int MonthsOfYear = 12;

    /// <summary>Spans of which at least three quarters are known. Those not wholly within the readings are offered only where no other is.</summary>
    /// <param name="cleaned">The readings.</param>
    /// <param name="reading">When the tariff has the meter read.</param>
    public static IReadOnlyList<MeterSpan> Of(CleanedMeter cleaned, MeterReading reading)
    {
        if (cleaned is not { IntervalMinutes: > 0, FirstDay: { } first, LastDay: { } last })
            return [];
        List<MeterSpan> spans = [.. Starts(reading, first, last).Distinct().OrderDescending()
            .Select(cleaned.SpanFrom).Where(span => span.KnownShare >= LeastKnown)];
        var whole = spans.Where(span => span.First >= first && span.Last <= last).ToList();
        return whole.Count > 0 ? whole : [.. spans.OrderBy(span => span.Missing).Take(MonthsOfYear)];
    }

    /// <summary>The newest, each whole years before it, the first, and calendar years where bills follow the calendar.</summary>
    private static IEnumerable<LocalDate> Starts(MeterReading reading, LocalDate first, LocalDate last)
    {
        if (reading.Dates.Count > 0)
            return Enumerable.Range(first.Year - reading.Dates[0].Year, last.Year - first.Year + 1).Select(reading.Dates[0].PlusYears);
        List<LocalDate> days = [.. MonthStarts(reading.DayOfMonth, first.PlusMonths(-MonthsOfYear / 4), last)];
        List<LocalDate> inside = [.. days.Where(day => day >= first && day.PlusYears(1) <= last.PlusDays(1))];
        if (inside.Count == 0)
            return days;
        return inside.Where((day, i) => i == 0 || (inside.Count - 1 - i) % MonthsOfYear == 0 || day is { Month: 1, Day: 1 });
    }

    private static IEnumerable<LocalDate> MonthStarts(int dayOfMonth, LocalDate from, LocalDate to)
    {
        for (var day = new LocalDate(from.Year, from.Month, Math.Clamp(dayOfMonth, 1, 28)); day <= to; day = day.PlusMonths(1))
            yield return day;
    }
}
