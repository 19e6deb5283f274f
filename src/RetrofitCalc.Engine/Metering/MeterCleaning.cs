using NodaTime;

namespace RetrofitCalc.Engine.Metering;

/// <summary>Puts the readings of a meter in order, each time once, and says what it found on the way.</summary>
public static class MeterCleaning
{
    /// <summary>Cleans readings as a file gives them. Nothing is filled: what no reading covers stays unknown.</summary>
    /// <param name="readings">The readings in the order of the file.</param>
    /// <param name="zone">The site's time zone.</param>
    /// <exception cref="ArgumentException">A reading has no length.</exception>
    public static CleanedMeter Of(IReadOnlyList<RawReading> readings, DateTimeZone zone)
    {
        if (readings.Any(reading => reading.Seconds <= 0))
            throw new ArgumentException("A reading speaks for no time.", nameof(readings));
        var findings = new FindingList(zone);
        NoteMarks(readings, findings);
        var once = EachOnce(InOrder(readings, findings), findings);
        var interval = MeterInterval.Of(once);
        if (interval is null)
            return new(zone, [], 0, findings.All());
        var laid = WithoutOverlaps(once, findings);
        foreach (var reading in once.Where(reading => reading.Seconds != interval.Common))
            findings.Add(MeterFindingKind.OtherLength, reading);
        NoteGaps(laid, interval.Minutes * 60, findings);
        return new(zone, laid, interval.Minutes, findings.All());
    }

    private static void NoteMarks(IReadOnlyList<RawReading> readings, FindingList findings)
    {
        foreach (var reading in readings)
        {
            if (reading.Watts < 0) findings.Add(MeterFindingKind.Negative, reading);
            if (reading.Marks == ReadingMarks.None) continue;
            if (reading.Marks.HasFlag(ReadingMarks.Estimated)) findings.Add(MeterFindingKind.Estimated, reading);
            if (reading.Marks.HasFlag(ReadingMarks.NoSuchLocalTime)) findings.Add(MeterFindingKind.NoSuchLocalTime, reading);
            if (reading.Marks.HasFlag(ReadingMarks.RepeatedHour)) findings.Add(MeterFindingKind.RepeatedHour, reading);
        }
    }

    /// <summary>Sorted by time; readings of the same time keep the order of the file.</summary>
    private static List<RawReading> InOrder(IReadOnlyList<RawReading> readings, FindingList findings)
    {
        var latest = long.MinValue;
        var disorder = false;
        foreach (var reading in readings)
        {
            if (reading.Start < latest) findings.Add(MeterFindingKind.OutOfOrder, reading);
            disorder |= reading.Start < latest;
            latest = Math.Max(latest, reading.Start);
        }
        return disorder ? [.. readings.OrderBy(reading => reading.Start)] : [.. readings];
    }

    private static List<RawReading> EachOnce(List<RawReading> sorted, FindingList findings)
    {
        var once = new List<RawReading>(sorted.Count);
        foreach (var reading in sorted)
        {
            if (once.Count == 0 || once[^1].Start != reading.Start || once[^1].Seconds != reading.Seconds)
            {
                once.Add(reading);
                continue;
            }
            findings.Add(once[^1].Watts == reading.Watts ? MeterFindingKind.SameTwice : MeterFindingKind.DifferentTwice, reading);
            once[^1] = reading;
        }
        return once;
    }

    private static List<RawReading> WithoutOverlaps(List<RawReading> sorted, FindingList findings)
    {
        var laid = new List<RawReading>(sorted.Count);
        var end = long.MinValue;
        foreach (var reading in sorted)
        {
            if (reading.Start < end) findings.Add(MeterFindingKind.Overlapping, reading);
            if (reading.End <= end) continue;
            var start = Math.Max(reading.Start, end);
            laid.Add(reading with { Start = start, Seconds = (int)(reading.End - start) });
            end = reading.End;
        }
        return laid;
    }

    private static void NoteGaps(List<RawReading> laid, int step, FindingList findings)
    {
        for (var i = 1; i < laid.Count; i++)
            if (laid[i].Start - laid[i - 1].End is var gap and > 0)
                findings.Add(MeterFindingKind.Missing, laid[i - 1].End, laid[i - 1].Line, (int)Math.Min(int.MaxValue / 64, (gap + step - 1) / step));
    }
}
