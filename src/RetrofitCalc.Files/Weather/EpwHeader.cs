using System.Text;

namespace RetrofitCalc.Files.Weather;

/// <summary>What stands above the hours of a weather file: the place in the first line, the data periods in the last.</summary>
internal sealed record EpwHeader(string Place, string Source, double UtcOffset)
{
    private const int MostLines = 50;
    private const string NotWeather = "This is not a weather file in EPW format: its first line must begin with LOCATION.";

    public static Parsed<EpwHeader> Read(EpwLines lines)
    {
        var first = lines.Next()?.TrimStart('\u00EF', '\u00BB', '\u00BF');
        if (first is null) return Parsed.Bad<EpwHeader>(lines.Refusal ?? FileProblem.Of("The file is empty."));
        if (!Begins(first, "LOCATION")) return Parsed.Bad<EpwHeader>(new FileProblem(1, 1, "", NotWeather));
        var location = new EpwFields(InUtf8(first), 1);
        if (location.Number(8) is not (>= -12 and <= 14))
            return Parsed.Bad<EpwHeader>(location.Problem(8, "time zone", $"Hours ahead of UTC, -12 to 14, must stand here; found {location.Quoted(8)}."));
        while (lines.Number < MostLines && lines.Next() is { } line)
            if (Begins(line, "DATA PERIODS"))
                return Periods(new EpwFields(line, lines.Number), Of(location));
        return Parsed.Bad<EpwHeader>(lines.Refusal ?? new FileProblem(lines.Number, null, "", "No line begins with DATA PERIODS, so it is not known where the hours begin."));
    }

    private static Parsed<EpwHeader> Periods(EpwFields line, EpwHeader header)
    {
        if (line.Whole(1) != 1)
            return Parsed.Bad<EpwHeader>(line.Problem(1, "data periods", $"One data period of a whole year is needed; found {line.Quoted(1)}."));
        return line.Whole(2) == 1
            ? Parsed.Good(header)
            : Parsed.Bad<EpwHeader>(line.Problem(2, "records per hour", $"One row for each hour is needed; found {line.Quoted(2)}. Have the file written by the hour."));
    }

    private static EpwHeader Of(EpwFields location)
    {
        var place = string.Join(", ", new[] { location[1], location[2], location[3] }.Where(part => part.Length > 0 && part != "-"));
        var source = string.Join(", ", new[] { location[4], location[5].Length > 0 ? $"station {location[5]}" : "" }.Where(part => part.Length > 0));
        return new(place.Length > 0 ? Shortened(place) : "A place without a name", source.Length > 0 ? Shortened(source) : "source not said", location.Number(8)!.Value);
    }

    private static bool Begins(string line, string word) => line.StartsWith(word, StringComparison.OrdinalIgnoreCase);

    private static string Shortened(string text)
    {
        const int enough = 120;
        return text.Length <= enough ? text : text[..enough] + " …";
    }

    /// <summary>Names with accents come in UTF-8 or in Latin letters of one byte.</summary>
    private static string InUtf8(string latin)
    {
        var bytes = Encoding.Latin1.GetBytes(latin);
        return System.Text.Unicode.Utf8.IsValid(bytes) ? Encoding.UTF8.GetString(bytes) : latin;
    }
}
