using NodaTime;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Metering;

/// <summary>When the intervals of a meter year begin.</summary>
public static class MeterTimes
{
    /// <summary>Local start of each interval, with its offset from UTC.</summary>
    /// <param name="year">The meter year.</param>
    /// <param name="zone">The site's time zone.</param>
    public static IEnumerable<OffsetDateTime> Of(MeterYear year, DateTimeZone zone)
    {
        var start = zone.AtStartOfDay(year.FirstDay).ToInstant();
        var known = zone.GetZoneInterval(start);
        for (var i = 0; i < year.Watts.Count; i++)
        {
            var instant = start + Duration.FromMinutes((long)i * year.IntervalMinutes);
            if (!known.Contains(instant)) known = zone.GetZoneInterval(instant);
            yield return instant.WithOffset(known.WallOffset);
        }
    }

    /// <summary>Intervals that a year from a first day has. [count]</summary>
    /// <param name="firstDay">First local day.</param>
    /// <param name="intervalMinutes">Length of an interval. [min]</param>
    /// <param name="zone">The site's time zone.</param>
    public static int CountOf(LocalDate firstDay, int intervalMinutes, DateTimeZone zone) =>
        (int)((zone.AtStartOfDay(firstDay.PlusYears(1)).ToInstant() - zone.AtStartOfDay(firstDay).ToInstant()).TotalMinutes / intervalMinutes);
}
