using RetrofitCalc.Engine.Heat;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Weather;
using RetrofitCalc.Reports;

namespace RetrofitCalc.Web.Features.Plant;

/// <summary>Sentences about weather.</summary>
public static class WeatherText
{
    /// <summary>The weather of a study: its place, its mean and its ends.</summary>
    public static string Of(Study study)
    {
        var (weather, text) = (study.Weather!, QuantityText.For(study));
        return $"{weather.Name}: {text.Number(weather.DryBulb.Average(), 1)} °C on average, {text.Number(weather.DryBulb.Min(), 1)} to {text.Number(weather.DryBulb.Max(), 1)} °C, standard time UTC{(weather.UtcOffset < 0 ? "" : "+")}{text.Number(weather.UtcOffset, weather.UtcOffset % 1 == 0 ? 0 : 2)}.";
    }

    /// <summary>How the hours of a year divide at the temperatures of a plant: what one looks at while setting them.</summary>
    public static string Hours(WeatherYear weather, PlantInteraction plant, QuantityText text)
    {
        string Count(PlantMode mode) => text.Number(weather.DryBulb.Count(outdoor => PlantHours.ModeAt(plant, outdoor) == mode));
        return $"Of the 8,760 hours of this year {Count(PlantMode.Cooling)} are cooled, {Count(PlantMode.Heating)} heated, and in {Count(PlantMode.Neither)} the lights' heat changes neither. What counts are those in which lights burn.";
    }

    /// <summary>What a file does not have, and what can be done about it.</summary>
    public static string Missing(EpwYear year)
    {
        const int enough = 5;
        var named = string.Join("; ", year.Missing.Take(enough)) + (year.Missing.Count > enough ? $"; and {year.Missing.Count - enough} more gaps" : "");
        return year.WhyNotFilled is { } reason
            ? $"{Hours(year.MissingCount)} without a temperature ({named}). {reason}"
            : $"{Hours(year.MissingCount)} without a temperature ({named}). They can be filled {EpwYear.FillRule}; reports will say so.";
    }

    public static string Hours(int count) => $"{count} missing {(count == 1 ? "hour" : "hours")}";
}
