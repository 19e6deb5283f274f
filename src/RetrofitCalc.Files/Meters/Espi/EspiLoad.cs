using System.Globalization;
using RetrofitCalc.Engine.Metering;

namespace RetrofitCalc.Files.Meters.Espi;

/// <summary>Turns a row of numbers into average watts, as its reading type says.</summary>
internal static class EspiLoad
{
    /// <summary>7 edited, 8 computed, 9 interpolated, 10 questionable, 11 derived, 12 projected, 13 mixed, 15 corrected for weather, 16 other.</summary>
    private static readonly int[] Doubtful = [7, 8, 9, 10, 11, 12, 13, 15, 16];

    private const long Earliest = -2_208_988_800; // 1900
    private const long Latest = 7_258_118_400;    // 2200
    private const double MostWatts = 1e9;

    public static MeterSource Of(string name, EspiReadingType? type, string? service, List<EspiReading> readings)
    {
        var refusal = service is not (null or "0") ? "It is not a meter of electricity."
            : type is null ? "The file does not say what its numbers mean: it has no reading type."
            : type.Refusal;
        var about = FormattableString.Invariant($"{type?.About ?? "unknown"}, {readings.Count:N0} readings");
        if (refusal is not null) return new(name, about, [], []) { Refusal = refusal };
        var notes = new List<string>();
        var load = type!.IsRegister ? Differences(readings, type, notes) : Averages(readings, type);
        NoteUnread(readings, load.Count, type.IsRegister, notes);
        if (type.IsReverse) notes.Add("These readings are energy sent out to the grid. They were read as a negative load.");
        return new(name, about, load, notes);
    }

    private static List<RawReading> Averages(List<EspiReading> readings, EspiReadingType type)
    {
        var load = new List<RawReading>(readings.Count);
        foreach (var reading in readings)
        {
            var seconds = reading.Seconds ?? type.IntervalLength;
            if (reading is not { Start: { } start, Value: { } value } || !IsPossible(start) || seconds is not (> 0 and <= 366 * 86400)) continue;
            Add(load, reading, (start, (int)seconds), value * type.Scale * (type.IsPower ? 1 : 3600.0 / seconds.Value) * Sign(type));
        }
        return load;
    }

    /// <summary>A register's energy between two readings is what it grew by; where it shrank or stood out of order, nothing is known.</summary>
    private static List<RawReading> Differences(List<EspiReading> readings, EspiReadingType type, List<string> notes)
    {
        var known = readings.Where(r => r is { Start: { } start, Value: not null } && IsPossible(start)).OrderBy(r => r.Start).ToList();
        var load = new List<RawReading>(known.Count);
        var shrank = 0;
        for (var i = 1; i < known.Count; i++)
        {
            var (seconds, grew) = (known[i].Start!.Value - known[i - 1].Start!.Value, (double)known[i].Value!.Value - known[i - 1].Value!.Value);
            if (grew < 0) shrank++;
            else if (seconds is > 0 and <= 366 * 86400) Add(load, known[i], (known[i - 1].Start!.Value, (int)seconds), grew * type.Scale * 3600.0 / seconds * Sign(type));
        }
        notes.Add("The file gives readings of a register. The load between two of them is what the register grew by.");
        if (shrank > 0) notes.Add($"The register went back {shrank} {(shrank == 1 ? "time" : "times")}. Nothing is known of those intervals.");
        return load;
    }

    private static void Add(List<RawReading> load, EspiReading reading, (long Start, int Seconds) period, double watts)
    {
        if (Math.Abs(watts) <= MostWatts)
            load.Add(new(period.Start, period.Seconds, watts) { Line = reading.Line, Marks = Doubtful.Contains(reading.Quality) ? ReadingMarks.Estimated : ReadingMarks.None });
    }

    private static bool IsPossible(long start) => start is >= Earliest and <= Latest;

    private static int Sign(EspiReadingType type) => type.IsReverse ? -1 : 1;

    private static void NoteUnread(List<EspiReading> readings, int used, bool register, List<string> notes)
    {
        var unread = register ? readings.Count(r => r.Start is null || r.Value is null) : readings.Count - used;
        if (unread == 0) return;
        var first = readings.FirstOrDefault(r => r.Start is null || r.Value is null);
        var where = first.Line > 0 ? string.Create(CultureInfo.InvariantCulture, $", the first on line {first.Line}") : "";
        notes.Add($"{unread} {(unread == 1 ? "reading" : "readings")} could not be read{where}: start, length or value is missing, no whole number or out of all range. They count as missing.");
    }
}
