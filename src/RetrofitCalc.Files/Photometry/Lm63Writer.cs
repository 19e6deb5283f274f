using System.Globalization;
using System.Text;
using RetrofitCalc.Engine.CropLight;

namespace RetrofitCalc.Files.Photometry;

/// <summary>Writes a distribution in the form of LM-63-2002. Factors are already in the intensities, so all are written as 1.</summary>
public static class Lm63Writer
{
    private const int LongestLine = 132; // short enough for every edition
    private const int LongestLabel = 200;

    public static byte[] Write(PhotometricFile file)
    {
        var text = new StringBuilder("IESNA:LM-63-2002\r\n");
        foreach (var label in file.Labels) WriteLabel(text, label.Keyword.Length == 0 ? "OTHER" : label.Keyword, label.Text);
        foreach (var missing in Lm63Edition.Of2002.RequiredKeywords().Where(word => file.Label(word) is null)) WriteLabel(text, missing, "not known");
        WriteTilt(text, file.Tilt);
        var light = file.Distribution;
        WriteSheet(text, light);
        WriteNumbers(text, light.VerticalDegrees);
        WriteNumbers(text, light.HorizontalDegrees);
        foreach (var plane in light.Candelas) WriteNumbers(text, plane);
        return Encoding.UTF8.GetBytes(text.ToString());
    }

    /// <summary>Text that is too long goes on under [MORE].</summary>
    private static void WriteLabel(StringBuilder text, string keyword, string words)
    {
        var plain = string.Concat(words.Select(letter => char.IsControl(letter) ? ' ' : letter));
        text.Append($"[{keyword}] {plain[..Math.Min(plain.Length, LongestLabel)]}\r\n");
        for (var from = LongestLabel; from < plain.Length; from += LongestLabel)
            text.Append($"[MORE] {plain[from..Math.Min(plain.Length, from + LongestLabel)]}\r\n");
    }

    private static void WriteTilt(StringBuilder text, LampTilt? tilt)
    {
        text.Append(tilt is null ? "TILT=NONE\r\n" : "TILT=INCLUDE\r\n");
        if (tilt is null) return;
        WriteNumbers(text, [tilt.LampGeometry]);
        WriteNumbers(text, [tilt.Degrees.Count]);
        WriteNumbers(text, tilt.Degrees);
        WriteNumbers(text, tilt.Multipliers);
    }

    private static void WriteSheet(StringBuilder text, LuminousIntensityDistribution light)
    {
        var type = light.Type switch { PhotometricType.C => 1, PhotometricType.B => 2, _ => 3 };
        WriteNumbers(text, [light.LampCount, light.LampFlux?.Lumens ?? -1, 1, light.VerticalDegrees.Count, light.HorizontalDegrees.Count, type, 2,
            light.Opening.WidthMetres, light.Opening.LengthMetres, light.Opening.HeightMetres], int.MaxValue);
        WriteNumbers(text, [1, 1, light.InputPower?.Watts ?? 0]);
    }

    private static void WriteNumbers(StringBuilder text, IReadOnlyList<double> numbers, int longest = LongestLine)
    {
        var used = 0;
        foreach (var number in numbers)
        {
            var word = number.ToString("R", CultureInfo.InvariantCulture);
            if (used > 0 && used + 1 + word.Length > longest) (used, _) = (0, text.Append("\r\n"));
            text.Append(used == 0 ? "" : " ").Append(word);
            used += word.Length + 1;
        }
        text.Append("\r\n");
    }
}
