using NodaTime;
using RetrofitCalc.Engine.Carbon;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Checks;

internal static class SiteCheck
{
    public static void Run(Study study, Problems problems)
    {
        var site = study.Site;
        if (DateTimeZoneProviders.Tzdb.GetZoneOrNull(site.TimeZone) is null)
            problems.Add("Site.TimeZone", $"Time zone \"{site.TimeZone}\" is not known; use an IANA name such as America/New_York.");
        problems.NotNegative("Site.BaseLoad", "Base load (watts)", site.BaseLoad.Watts);
        problems.InRange("Site.PowerFactor", "Power factor of the meter", site.PowerFactor, 0.3, 1);
        if (site.GridRegion is { } region && GridFactors.Find(region) is null)
            problems.Add("Site.GridRegion", $"\"{region}\" is not a grid region with known factors; give one of {string.Join(", ", GridFactors.All.Select(known => known.Code))}.");
    }
}
