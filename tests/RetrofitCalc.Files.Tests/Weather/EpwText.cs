using System.Globalization;
using System.Text;

namespace RetrofitCalc.Files.Tests.Weather;

/// <summary>Weather files as the EPW data dictionary describes them, with the fields this project reads and a few that it does not.</summary>
internal static class EpwText
{
    public static List<string> Lines(Func<int, double> celsius, bool leapDay = false, string location = "LOCATION,Quillmere,OH,USA,Invented,000000,40.1,-82.5,-5.0,250.0")
    {
        List<string> lines =
        [
            location, "DESIGN CONDITIONS,0", "TYPICAL/EXTREME PERIODS,0", "GROUND TEMPERATURES,0", "HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0",
            "COMMENTS 1,Invented", "COMMENTS 2,", "DATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31",
        ];
        for (var hour = 0; hour < 8760; hour++)
        {
            if (leapDay && hour == 59 * 24) lines.AddRange(Enumerable.Range(0, 24).Select(h => Row(2, 29, h, -44)));
            var day = new DateOnly(2027, 1, 1).AddDays(hour / 24);
            lines.Add(Row(day.Month, day.Day, hour % 24, celsius(hour)));
        }
        return lines;
    }

    public static Stream Stream(IEnumerable<string> lines) => new MemoryStream(Encoding.UTF8.GetBytes(string.Join("\r\n", lines)));

    private static string Row(int month, int day, int hour, double celsius) =>
        string.Create(CultureInfo.InvariantCulture, $"1999,{month},{day},{hour + 1},60,?9?9,{celsius:0.0},4.0,80,101325,0,0,300");
}
