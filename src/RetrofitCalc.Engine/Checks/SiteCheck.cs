using NodaTime;
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
        var plant = site.Plant;
        problems.InRange("Site.Plant.CooledShare", "Share of lit hours cooled", plant.CooledShare, 0, 1);
        problems.InRange("Site.Plant.HeatedShare", "Share of lit hours heated", plant.HeatedShare, 0, 1);
        problems.InRange("Site.Plant.CoolingCop", "Cooling COP", plant.CoolingCop, 0.5, 20);
        problems.InRange("Site.Plant.HeatingCop", "Heating COP", plant.HeatingCop, 1, 20);
        problems.InRange("Site.Plant.FurnaceEfficiency", "Furnace efficiency", plant.FurnaceEfficiency, 0.1, 1);
        problems.NotNegative("Site.Plant.FuelPricePerTherm", "Price of a therm of fuel", plant.FuelPricePerTherm.Units);
    }
}
