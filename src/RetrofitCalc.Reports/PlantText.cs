using RetrofitCalc.Engine.Carbon;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Reports;

/// <summary>Plant, weather and grid of a study in words.</summary>
internal static class PlantText
{
    /// <summary>Rows for a table of assumptions: the site's plant, areas with their own, weather, grid.</summary>
    public static IEnumerable<(string Name, string Value)> Rows(Study study, QuantityText text)
    {
        yield return ("Plant", Of(study.Site.Plant, text));
        foreach (var area in study.Areas)
            if (area.Plant is { } own)
                yield return ($"Plant of {area.Name}", Of(own, text));
        if (study.Weather is { } weather)
            yield return ("Weather", $"{weather.Name}; {weather.Source.Source}");
        if (GridFactors.Find(study.Site.GridRegion) is { } region)
            yield return ("Grid", $"{region.Code}, {region.Name}: {text.Number(region.Average, 1)} lb of CO2e a MWh on average for the yearly figure, {text.Number(region.NonBaseload, 1)} for a change; heating fuel as natural gas, {text.Number(CarbonAccount.KilogramsPerTherm * 10, 2)} kg of CO2 per million BTU (from memory)");
    }

    private static string Of(PlantInteraction plant, QuantityText text) => plant.Method switch
    {
        PlantMethod.Shares => $"cooled {text.Percent(plant.CooledShare)} of lit hours{Cooling(plant, text)}; heated {text.Percent(plant.HeatedShare)}{(plant.HeatedShare == 0 ? "" : Heating(plant, text))}",
        PlantMethod.InteractionFactors => $"{text.Number(plant.InteractionFactor, 2)} kWh kept of each lighting kWh saved, {text.Number(plant.InteractionTherms, 5)} therm; {plant.InteractionBuilding ?? "own factors"}",
        PlantMethod.Hourly => $"by the hour: cooled from {text.Number(plant.CoolingBalance, 1)} °C outdoors{(plant.EconomiserLimit is { } limit ? $", outside air alone up to {text.Number(limit, 1)} °C" : "")}{Cooling(plant, text)}; heated below {text.Number(plant.HeatingBalance, 1)} °C{Heating(plant, text)}",
        _ => $"a sealed room, cooled whenever its lights burn{Cooling(plant, text)}",
    } + (plant.LatentShare > 0 ? $"; {text.Percent(plant.LatentShare)} of the heat turned into moisture" : "");

    private static string Cooling(PlantInteraction plant, QuantityText text) => $" at COP {text.Number(plant.CoolingCop, 1)}";

    private static string Heating(PlantInteraction plant, QuantityText text) => plant.HeatingCop is { } cop
        ? $" at COP {text.Number(cop, 1)}"
        : $", fuel at {text.Percent(plant.FurnaceEfficiency)} and {text.Cents(plant.FuelPricePerTherm)} a therm";
}
