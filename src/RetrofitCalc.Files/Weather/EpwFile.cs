namespace RetrofitCalc.Files.Weather;

/// <summary>Reads the dry-bulb temperatures of a weather file in EPW format (EnergyPlus Auxiliary Programs, EPW data dictionary, S-31).</summary>
public static class EpwFile
{
    public const int LimitMegabytes = 16;

    /// <summary>Reads row by row, never the whole file at once. Missing hours are no problem of the file; whoever takes the year says whether to fill them.</summary>
    public static Parsed<EpwYear> Read(Stream stream)
    {
        try
        {
            var lines = new EpwLines(stream);
            var header = EpwHeader.Read(lines);
            return header.Value is { } place ? ReadHours(lines, place) : Parsed.Bad<EpwYear>([.. header.Problems]);
        }
        catch (IOException unreadable)
        {
            return Parsed.Bad<EpwYear>($"The file could not be read: {unreadable.Message}");
        }
    }

    private static Parsed<EpwYear> ReadHours(EpwLines lines, EpwHeader header)
    {
        var hours = new EpwHours();
        while (lines.Next() is { } line)
            if (line.Trim().Length > 0 && !hours.Add(new EpwFields(line, lines.Number))) break;
        if (lines.Refusal is { } refusal) return Parsed.Bad<EpwYear>(refusal);
        if (hours.Problems.Count > 0) return Parsed.Bad<EpwYear>([.. hours.Problems]);
        return hours.Unfinished(lines.Number) is { } unfinished
            ? Parsed.Bad<EpwYear>(unfinished)
            : Parsed.Good(new EpwYear(header.Place, header.Source, header.UtcOffset, [.. hours.Hours], hours.HasLeapDay));
    }
}
