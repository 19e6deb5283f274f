using NodaTime;

namespace RetrofitCalc.Engine.Operation;

/// <summary>One calendar year at the site's clock. Instants are whole seconds since 1970 (UTC).</summary>
public sealed class SiteYear
{
    /// <summary>The year at a time zone.</summary>
    /// <param name="timeZone">IANA name, such as America/New_York.</param>
    /// <param name="year">Calendar year.</param>
    /// <exception cref="NodaTime.TimeZones.DateTimeZoneNotFoundException">The zone is not known.</exception>
    public SiteYear(string timeZone, int year)
    {
        Zone = DateTimeZoneProviders.Tzdb[timeZone];
        Year = year;
        MonthStarts = [.. Enumerable.Range(0, 13).Select(month => StartOf(new LocalDate(year, 1, 1).PlusMonths(month)))];
    }

    /// <summary>The site's time zone.</summary>
    public DateTimeZone Zone { get; }

    /// <summary>Calendar year.</summary>
    public int Year { get; }

    /// <summary>Start of each month, and of the next year as the thirteenth. [s since 1970]</summary>
    public IReadOnlyList<long> MonthStarts { get; }

    /// <summary>First instant of the year. [s since 1970]</summary>
    public long Start => MonthStarts[0];

    /// <summary>First instant of the next year. [s since 1970]</summary>
    public long End => MonthStarts[12];

    /// <summary>Days of the year, in order.</summary>
    public IEnumerable<LocalDate> Days
    {
        get
        {
            for (var day = new LocalDate(Year, 1, 1); day.Year == Year; day = day.PlusDays(1))
                yield return day;
        }
    }

    /// <summary>First instant of a day. [s since 1970]</summary>
    /// <param name="day">The day.</param>
    public long StartOf(LocalDate day) => Zone.AtStartOfDay(day).ToInstant().ToUnixTimeSeconds();

    /// <summary>Instant of a wall time. One that does not exist shifts forward by the gap; one that occurs twice means its first occurrence. [s since 1970]</summary>
    /// <param name="wallTime">Local date and time.</param>
    public long At(LocalDateTime wallTime) => Zone.AtLeniently(wallTime).ToInstant().ToUnixTimeSeconds();

    /// <summary>Wall time of an instant.</summary>
    /// <param name="instant">The instant. [s since 1970]</param>
    public LocalDateTime WallTime(long instant) => Instant.FromUnixTimeSeconds(instant).InZone(Zone).LocalDateTime;
}
