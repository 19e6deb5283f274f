using NodaTime;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Operation;

/// <summary>Twelve billing months at the site's clock: a calendar year unless the meter is read otherwise. Instants are whole seconds since 1970 (UTC).</summary>
public sealed class SiteYear
{
    /// <summary>A calendar year at a time zone.</summary>
    /// <param name="timeZone">IANA name, such as America/New_York.</param>
    /// <param name="year">Calendar year.</param>
    /// <exception cref="NodaTime.TimeZones.DateTimeZoneNotFoundException">The zone is not known.</exception>
    public SiteYear(string timeZone, int year)
        : this(timeZone, [.. Enumerable.Range(0, BillingYear.Months + 1).Select(new LocalDate(year, 1, 1).PlusMonths)])
    {
    }

    /// <summary>Twelve billing months at a time zone.</summary>
    /// <param name="timeZone">IANA name, such as America/New_York.</param>
    /// <param name="firstDays">First day of each billing month, and the day after the last: thirteen days in order.</param>
    /// <exception cref="NodaTime.TimeZones.DateTimeZoneNotFoundException">The zone is not known.</exception>
    public SiteYear(string timeZone, IReadOnlyList<LocalDate> firstDays)
    {
        Zone = DateTimeZoneProviders.Tzdb[timeZone];
        MonthStarts = [.. firstDays.Select(StartOf)];
        const int seventh = 6;
        var middle = firstDays[seventh].PlusDays(Period.DaysBetween(firstDays[seventh], firstDays[seventh + 1]) / 2).ToYearMonth();
        Months = [.. Enumerable.Range(0, BillingYear.Months).Select(month =>
            new BillingMonth(middle.PlusMonths(month - seventh), firstDays[month], firstDays[month + 1].PlusDays(-1)))];
    }

    /// <summary>The year a study looks at.</summary>
    /// <param name="study">A study without problems.</param>
    public static SiteYear Of(Study study) => new(study.Site.TimeZone, BillingYear.FirstDays(study));

    /// <summary>The site's time zone.</summary>
    public DateTimeZone Zone { get; }

    /// <summary>Billing months, in order.</summary>
    public IReadOnlyList<BillingMonth> Months { get; }

    /// <summary>First day.</summary>
    public LocalDate FirstDay => Months[0].First;

    /// <summary>Last day, included.</summary>
    public LocalDate LastDay => Months[^1].Last;

    /// <summary>Whether the billing months are those of the calendar, January to December.</summary>
    public bool IsCalendarYear => FirstDay is { Month: 1, Day: 1 } && Months.All(month => month.First.Day == 1 && month.Last == month.First.PlusMonths(1).PlusDays(-1));

    /// <summary>Calendar year of the middle.</summary>
    public int Year => Months[Months.Count / 2].Name.Year;

    /// <summary>Start of each billing month, and of the next year as the thirteenth. [s since 1970]</summary>
    public IReadOnlyList<long> MonthStarts { get; }

    /// <summary>First instant of the year. [s since 1970]</summary>
    public long Start => MonthStarts[0];

    /// <summary>First instant after the year. [s since 1970]</summary>
    public long End => MonthStarts[^1];

    /// <summary>Days of the year, in order.</summary>
    public IEnumerable<LocalDate> Days => Months.SelectMany(month => month.Days);

    /// <summary>Billing month in which a date of the year falls; the first when it falls in none, as it can in a year of fewer than 365 days. [0-based]</summary>
    /// <param name="date">The date.</param>
    public int MonthOf(AnnualDate date)
    {
        var found = Months.Index().FirstOrDefault(month => Holds(month.Item, date.InYear(FirstDay.Year)) || Holds(month.Item, date.InYear(LastDay.Year)));
        return found.Index;
    }

    /// <summary>First instant of a day. [s since 1970]</summary>
    /// <param name="day">The day.</param>
    public long StartOf(LocalDate day) => Zone.AtStartOfDay(day).ToInstant().ToUnixTimeSeconds();

    /// <summary>Instant of a wall time. One that does not exist shifts forward by the gap; one that occurs twice means its first occurrence. [s since 1970]</summary>
    /// <param name="wallTime">Local date and time.</param>
    public long At(LocalDateTime wallTime) => Zone.AtLeniently(wallTime).ToInstant().ToUnixTimeSeconds();

    /// <summary>Seconds of the wall clock's day at an instant. [s]</summary>
    /// <param name="instant">The instant. [s since 1970]</param>
    public long SecondOfDay(long instant)
    {
        var wall = (instant + Zone.GetUtcOffset(Instant.FromUnixTimeSeconds(instant)).Seconds) % NodaConstants.SecondsPerDay;
        return wall < 0 ? wall + NodaConstants.SecondsPerDay : wall;
    }

    /// <summary>Wall time of an instant.</summary>
    /// <param name="instant">The instant. [s since 1970]</param>
    public LocalDateTime WallTime(long instant) => Instant.FromUnixTimeSeconds(instant).InZone(Zone).LocalDateTime;

    private static bool Holds(BillingMonth month, LocalDate day) => month.First <= day && day <= month.Last;
}
