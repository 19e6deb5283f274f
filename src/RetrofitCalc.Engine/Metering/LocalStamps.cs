using NodaTime;

namespace RetrofitCalc.Engine.Metering;

/// <summary>Turns the local times of a file, one after the other, into instants.</summary>
/// <remarks>
/// A time the clocks skipped shifts forward by the gap. One that comes twice means its first occurrence, and when the file has already
/// given that one, its second: so the hour that repeats in autumn is kept whole.
/// </remarks>
/// <param name="zone">The site's time zone.</param>
public sealed class LocalStamps(DateTimeZone zone)
{
    private readonly HashSet<long> _firstOccurrences = [];

    /// <summary>The instant of the next local time of the file. [s since 1970, UTC]</summary>
    /// <param name="wallTime">Local date and time.</param>
    public (long Instant, ReadingMarks Marks) Next(LocalDateTime wallTime)
    {
        var mapping = zone.MapLocal(wallTime);
        if (mapping.Count == 1)
            return (mapping.Single().ToInstant().ToUnixTimeSeconds(), ReadingMarks.None);
        if (mapping.Count == 0)
            return (zone.AtLeniently(wallTime).ToInstant().ToUnixTimeSeconds(), ReadingMarks.NoSuchLocalTime);
        var first = mapping.First().ToInstant().ToUnixTimeSeconds();
        return _firstOccurrences.Add(first)
            ? (first, ReadingMarks.None)
            : (mapping.Last().ToInstant().ToUnixTimeSeconds(), ReadingMarks.RepeatedHour);
    }
}
