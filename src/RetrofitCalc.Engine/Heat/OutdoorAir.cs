using NodaTime;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Heat;

/// <summary>Temperature outdoors at any instant, from a weather year of 8,760 hours by standard time (E-27).</summary>
/// <remarks>
/// The year of the file stands for every year: an instant takes the hour of the same day and standard time, and 29 February takes
/// 28 February. Hour h of a day covers (h−1, h], the convention of the EPW data dictionary.
/// </remarks>
/// <param name="weather">The weather year.</param>
public sealed class OutdoorAir(WeatherYear weather)
{
    /// <summary>Hours of a weather year. [count]</summary>
    public const int Hours = 365 * 24;

    private readonly Offset _standard = Offset.FromSeconds((int)Math.Round(weather.UtcOffset * NodaConstants.SecondsPerHour));

    /// <summary>First instant of the hour that holds an instant. [s since 1970]</summary>
    /// <param name="instant">The instant. [s since 1970]</param>
    public long HourStart(long instant) => instant - FloorModulo(instant + _standard.Seconds, NodaConstants.SecondsPerHour);

    /// <summary>Dry-bulb temperature of the hour that holds an instant. [°C]</summary>
    /// <param name="instant">The instant. [s since 1970]</param>
    public double At(long instant)
    {
        var time = Instant.FromUnixTimeSeconds(instant).WithOffset(_standard).LocalDateTime;
        return weather.DryBulb[DayOf(time.Date) * 24 + time.Hour];
    }

    private static int DayOf(LocalDate date)
    {
        var afterLeapDay = CalendarSystem.Iso.IsLeapYear(date.Year) && date.DayOfYear >= 60;
        return date.DayOfYear - (afterLeapDay ? 2 : 1);
    }

    private static long FloorModulo(long value, long divisor) => ((value % divisor) + divisor) % divisor;
}
