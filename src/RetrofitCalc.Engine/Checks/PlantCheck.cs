using RetrofitCalc.Engine.Heat;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Checks;

internal static class PlantCheck
{
    public static void Run(Study study, Problems problems)
    {
        Check(study.Site.Plant, "Site.Plant", study.Weather, problems);
        foreach (var (index, area) in study.Areas.Index())
            if (area.Plant is { } plant)
                Check(plant, $"Areas[{index}].Plant", study.Weather, problems);
        CheckWeather(study.Weather, problems);
    }

    private static void Check(PlantInteraction plant, string path, WeatherYear? weather, Problems problems)
    {
        problems.InRange($"{path}.CooledShare", "Share of lit hours cooled", plant.CooledShare, 0, 1);
        problems.InRange($"{path}.HeatedShare", "Share of lit hours heated", plant.HeatedShare, 0, 1);
        problems.InRange($"{path}.CoolingCop", "Cooling COP", plant.CoolingCop, 0.5, 20);
        problems.InRange($"{path}.HeatingCop", "Heating COP", plant.HeatingCop, 1, 20);
        problems.InRange($"{path}.FurnaceEfficiency", "Furnace efficiency", plant.FurnaceEfficiency, 0.1, 1);
        problems.NotNegative($"{path}.FuelPricePerTherm", "Price of a therm of fuel", plant.FuelPricePerTherm.Units);
        problems.InRange($"{path}.InteractionFactor", "Electricity kept of each lighting kWh saved", plant.InteractionFactor, 0, 2);
        problems.InRange($"{path}.InteractionTherms", "Fuel for each lighting kWh saved (therm)", plant.InteractionTherms, -0.1, 0.1);
        problems.InRange($"{path}.LatentShare", "Share of the lights' heat turned into moisture", plant.LatentShare, 0, 0.9);
        CheckTemperatures(plant, path, problems);
        if (plant.Method == PlantMethod.Hourly && weather is null)
            problems.Add($"{path}.Method", "Cooling and heating by the hour need a weather file; read one, or choose another method.");
    }

    private static void CheckTemperatures(PlantInteraction plant, string path, Problems problems)
    {
        problems.InRange($"{path}.CoolingBalance", "Outdoor temperature from which the place is cooled (°C)", plant.CoolingBalance, -40, 50);
        problems.InRange($"{path}.HeatingBalance", "Outdoor temperature below which the place is heated (°C)", plant.HeatingBalance, -40, 50);
        problems.InRange($"{path}.EconomiserLimit", "Outdoor temperature up to which outside air cools (°C)", plant.EconomiserLimit, -40, 50);
        if (plant.HeatingBalance > plant.CoolingBalance)
            problems.Add($"{path}.HeatingBalance", $"The place is heated below {Problems.Text(plant.HeatingBalance)} °C and cooled from {Problems.Text(plant.CoolingBalance)} °C; the first may not be above the second.");
    }

    private static void CheckWeather(WeatherYear? weather, Problems problems)
    {
        if (weather is null)
            return;
        problems.InRange("Weather.UtcOffset", "Standard time of the weather file, ahead of UTC (hours)", weather.UtcOffset, -12, 14);
        if (weather.DryBulb.Count != OutdoorAir.Hours)
        {
            problems.Add("Weather.DryBulb", $"The weather year has {weather.DryBulb.Count} hours; it must have {OutdoorAir.Hours}.");
            return;
        }
        var odd = weather.DryBulb.Index().FirstOrDefault(hour => !(hour.Item > -70 && hour.Item < 70), (-1, 0));
        if (odd.Index >= 0)
            problems.Add($"Weather.DryBulb[{odd.Index}]", $"The temperature of hour {odd.Index + 1} of the weather year is {Problems.Text(odd.Item)} °C; it must lie between -70 and 70.");
    }
}
