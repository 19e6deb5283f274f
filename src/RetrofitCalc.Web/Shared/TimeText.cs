using System.Globalization;
using NodaTime;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Web.Shared;

/// <summary>Times of day as the site's clock and culture show them.</summary>
public static class TimeText
{
    public static string Clock(Instant at, Site site)
    {
        var zone = DateTimeZoneProviders.Tzdb.GetZoneOrNull(site.TimeZone) ?? DateTimeZone.Utc;
        return at.InZone(zone).ToDateTimeUnspecified().ToString("t", CultureInfo.GetCultureInfo(site.Culture));
    }

    /// <summary>A day in the list of studies, where no site's zone applies.</summary>
    public static string Day(Instant at) => at.InUtc().Date.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture);
}
