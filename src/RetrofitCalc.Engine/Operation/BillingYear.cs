using NodaTime;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Operation;

/// <summary>Which twelve billing months a study looks at (E-24).</summary>
/// <remarks>
/// Reading dates as given; otherwise months that begin on the tariff's day: within the meter's readings when there are any, else those
/// called January to December of the start's year.
/// </remarks>
public static class BillingYear
{
    /// <summary>Billing months of a year. [count]</summary>
    public const int Months = 12;

    /// <summary>First day of each billing month, and the day after the last: thirteen days.</summary>
    /// <param name="study">The study; of its reading dates only their number matters here, the checks see to the rest.</param>
    public static IReadOnlyList<LocalDate> FirstDays(Study study)
    {
        var reading = study.Tariff.Reading;
        if (reading.Dates.Count == Months + 1)
            return reading.Dates;
        var first = study.Meter is { } meter
            ? FirstOn(meter.FirstDay, reading.DayOfMonth)
            : FirstOfYear(study.Assumptions.Start.Year, reading.DayOfMonth);
        return [.. Enumerable.Range(0, Months + 1).Select(first.PlusMonths)];
    }

    /// <summary>A month that begins by the 16th has its middle in the same calendar month, one that begins later in the next.</summary>
    private static LocalDate FirstOfYear(int year, int dayOfMonth)
    {
        var january = new LocalDate(year, 1, dayOfMonth);
        return dayOfMonth <= 16 ? january : january.PlusMonths(-1);
    }

    private static LocalDate FirstOn(LocalDate from, int dayOfMonth)
    {
        var sameMonth = new LocalDate(from.Year, from.Month, dayOfMonth);
        return sameMonth >= from ? sameMonth : sameMonth.PlusMonths(1);
    }
}
