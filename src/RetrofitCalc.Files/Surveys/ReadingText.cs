using System.Globalization;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Typing;

namespace RetrofitCalc.Files.Surveys;

/// <summary>A meter reading as one text: 57.5 W on 2026-03-04.</summary>
internal static class ReadingText
{
    private static readonly string[] Between = [" W on ", " W ", " on "];

    public static Parsed<PowerReading?> Parse(string text, CultureInfo culture)
    {
        if (text.Length == 0) return Parsed.Good<PowerReading?>(null);
        var between = Between.FirstOrDefault(b => text.Contains(b, StringComparison.OrdinalIgnoreCase));
        if (between is null) return Parsed.Bad<PowerReading?>($"{CellText.Quote(text)}: give watts and the day of the reading, such as {Example(culture)}.");
        var at = text.IndexOf(between, StringComparison.OrdinalIgnoreCase);
        var watts = NumberText.Parse(text[..at], culture);
        var date = DateText.Parse(text[(at + between.Length)..], culture);
        if (!watts.Ok || !date.Ok) return new Parsed<PowerReading?>(null, [.. watts.Problems, .. date.Problems]);
        return (watts.Value, date.Value) switch
        {
            ({ } power and >= 0 and <= 1e5, { } day) => Parsed.Good<PowerReading?>(new PowerReading(Power.FromWatts(power), day)),
            _ => Parsed.Bad<PowerReading?>($"{CellText.Quote(text)}: the watts of one luminaire and the day are needed, such as {Example(culture)}."),
        };
    }

    public static string Write(PowerReading reading, CultureInfo culture) =>
        $"{NumberText.Write(reading.Power.Watts, culture)} W on {DateText.Write(reading.Date)}";

    private static string Example(CultureInfo culture) => $"{NumberText.Write(57.5, culture)} W on 2027-03-15";
}
