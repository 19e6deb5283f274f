using System.Globalization;
using NodaTime;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Web.Shared;

/// <summary>Times of day as the site's clock and culture show them.</summary>
public static class TimeText
{
    public static string Clock(Instant at, Site site)
    {
        return at.InZone(ZoneOf(site)).ToDateTimeUnspecified().ToString("t", CultureInfo.GetCultureInfo(site.Culture));
    }

    /// <summary>A day in the list of studies, where no site's zone applies.</summary>
    public static string Day(Instant at) => at.InUtc().Date.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>The day it is at the site.</summary>
    public static LocalDate Today(IClock clock, Site site) => DayAt(clock.GetCurrentInstant(), site);

    /// <summary>The day it was at the site.</summary>
    public static LocalDate DayAt(Instant at, Site site) => at.InZone(ZoneOf(site)).Date;

    private static DateTimeZone ZoneOf(Site site) => DateTimeZoneProviders.Tzdb.GetZoneOrNull(site.TimeZone) ?? DateTimeZone.Utc;
}
