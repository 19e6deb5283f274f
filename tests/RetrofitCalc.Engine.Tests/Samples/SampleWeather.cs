using RetrofitCalc.Engine.Heat;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Tests.Samples;

/// <summary>Weather years anyone can redo in the head.</summary>
internal static class SampleWeather
{
    /// <summary>The same temperature all year.</summary>
    public static WeatherYear Steady(double celsius) => Of(_ => celsius);

    /// <summary>A temperature from the hour of the year, 0 to 8759, by the standard time of New York.</summary>
    public static WeatherYear Of(Func<int, double> celsius) =>
        new() { Name = "Invented weather", UtcOffset = -5, DryBulb = [.. Enumerable.Range(0, OutdoorAir.Hours).Select(celsius)] };
}
