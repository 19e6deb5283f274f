using NodaTime;

namespace RetrofitCalc.Engine.Studies;

/// <summary>A day that comes once a year, by a rule; or once only.</summary>
public abstract record Holiday
{
    /// <summary>Whether it falls on a day.</summary>
    /// <param name="day">The day.</param>
    public abstract bool IsOn(LocalDate day);
}

/// <summary>The same date each year.</summary>
/// <param name="Date">The date.</param>
/// <param name="Moves">What happens when it falls on a weekend.</param>
public sealed record FixedHoliday(AnnualDate Date, WeekendMove Moves = WeekendMove.Stays) : Holiday
{
    /// <inheritdoc/>
    public override bool IsOn(LocalDate day) =>
        // A move reaches one day back or on, so the date itself is at most a day away.
        Enumerable.Range(-1, 3).Any(offset => day.PlusDays(offset) is var date && Date.InYear(date.Year) == date && Observed(date) == day);

    private LocalDate Observed(LocalDate date) => (Moves, date.DayOfWeek) switch
    {
        (WeekendMove.SundayToMonday or WeekendMove.NearestWeekday, IsoDayOfWeek.Sunday) => date.PlusDays(1),
        (WeekendMove.NearestWeekday, IsoDayOfWeek.Saturday) => date.PlusDays(-1),
        _ => date,
    };
}

/// <summary>What happens to a holiday on a weekend.</summary>
public enum WeekendMove
{
    /// <summary>It stays there.</summary>
    Stays,
    /// <summary>From Sunday it moves to Monday.</summary>
    SundayToMonday,
    /// <summary>From Sunday to Monday, from Saturday to Friday.</summary>
    NearestWeekday,
}

/// <summary>The nth or last weekday of a month, or some days after it.</summary>
/// <param name="Nth">1 to 4 for the first to fourth; −1 for the last.</param>
/// <param name="Weekday">Day of the week.</param>
/// <param name="Month">Month. [1–12]</param>
/// <param name="DaysAfter">Days after that day, such as 1 for the Friday after a fourth Thursday. [days, −7 to 7]</param>
public sealed record WeekdayHoliday(int Nth, IsoDayOfWeek Weekday, int Month, int DaysAfter = 0) : Holiday
{
    /// <inheritdoc/>
    public override bool IsOn(LocalDate day)
    {
        var date = day.PlusDays(-DaysAfter);
        if (date.Month != Month || date.DayOfWeek != Weekday)
            return false;
        return Nth < 0 ? date.PlusDays(7).Month != Month : (date.Day - 1) / 7 + 1 == Nth;
    }
}

/// <summary>Easter Sunday of the Western churches, or some days before or after.</summary>
/// <param name="DaysAfter">Days after Easter Sunday: −2 for Good Friday, 1 for Easter Monday, 39 for Ascension. [days, −60 to 60]</param>
public sealed record EasterHoliday(int DaysAfter = 0) : Holiday
{
    /// <inheritdoc/>
    public override bool IsOn(LocalDate day) => Sunday(day.Year).PlusDays(DaysAfter) == day;

    /// <summary>Easter Sunday in the Gregorian calendar: the anonymous algorithm of Meeus, Astronomical Algorithms (1991), chapter 8.</summary>
    /// <param name="year">Year. [1583 and later]</param>
    public static LocalDate Sunday(int year)
    {
        var (golden, century, inCentury) = (year % 19, year / 100, year % 100);
        var epact = (19 * golden + century - century / 4 - (century - (century + 8) / 25 + 1) / 3 + 15) % 30;
        var toSunday = (32 + 2 * (century % 4) + 2 * (inCentury / 4) - epact - inCentury % 4) % 7;
        var late = (golden + 11 * epact + 22 * toSunday) / 451;
        var count = epact + toSunday - 7 * late + 114;
        return new(year, count / 31, count % 31 + 1);
    }
}

/// <summary>One day of one year.</summary>
/// <param name="Date">The day.</param>
public sealed record SingleHoliday(LocalDate Date) : Holiday
{
    /// <inheritdoc/>
    public override bool IsOn(LocalDate day) => Date == day;
}
