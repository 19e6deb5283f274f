using NodaTime;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Metering;

/// <summary>Readings in order of time, each time once, ready to be laid on an even grid.</summary>
public sealed class CleanedMeter
{
    private readonly DateTimeZone _zone;
    private readonly IReadOnlyList<RawReading> _readings;

    internal CleanedMeter(DateTimeZone zone, IReadOnlyList<RawReading> readings, int intervalMinutes, IReadOnlyList<MeterFinding> findings)
    {
        (_zone, _readings, IntervalMinutes, Findings) = (zone, readings, intervalMinutes, findings);
    }

    /// <summary>Length of an interval of the grid; 0 when no grid could be laid: no readings, or longer ones than an hour. [min; 0, 5, 15, 30 or 60]</summary>
    public int IntervalMinutes { get; }

    /// <summary>What was found and what was done about it, by kind.</summary>
    public IReadOnlyList<MeterFinding> Findings { get; }

    /// <summary>Readings left. [count]</summary>
    public int Count => _readings.Count;

    /// <summary>First local day with a reading; null without readings.</summary>
    public LocalDate? FirstDay => _readings.Count == 0 ? null : DayOf(_readings[0].Start);

    /// <summary>Last local day with a reading; null without readings.</summary>
    public LocalDate? LastDay => _readings.Count == 0 ? null : DayOf(_readings[^1].End - 1);

    /// <summary>One year of even intervals. An interval that readings cover only in part is unknown.</summary>
    /// <param name="firstDay">First local day, usually that of a span.</param>
    /// <param name="name">Name people use.</param>
    /// <param name="source">Where the data come from.</param>
    /// <exception cref="InvalidOperationException">No grid could be laid.</exception>
    public MeterYear Year(LocalDate firstDay, string name, Provenance source) => IntervalMinutes == 0
        ? throw new InvalidOperationException("There are no readings of an hour or less.")
        : new()
        {
            Name = name,
            Source = source,
            FirstDay = firstDay,
            IntervalMinutes = IntervalMinutes,
            Watts = MeterGrid.Lay(_readings, MidnightOf(firstDay), IntervalsFrom(firstDay), IntervalMinutes * 60),
        };

    internal MeterSpan SpanFrom(LocalDate first)
    {
        var count = IntervalsFrom(first);
        return new(first, count, count - MeterGrid.KnownIn(_readings, MidnightOf(first), count, IntervalMinutes * 60));
    }

    private LocalDate DayOf(long instant) => Instant.FromUnixTimeSeconds(instant).InZone(_zone).Date;

    private long MidnightOf(LocalDate day) => _zone.AtStartOfDay(day).ToInstant().ToUnixTimeSeconds();

    private int IntervalsFrom(LocalDate first) => (int)((MidnightOf(first.PlusYears(1)) - MidnightOf(first)) / (IntervalMinutes * 60));
}

/// <summary>Twelve months of a meter.</summary>
/// <param name="First">First local day.</param>
/// <param name="Intervals">Intervals in it. [count]</param>
/// <param name="Missing">Intervals of which nothing is known. [count]</param>
public sealed record MeterSpan(LocalDate First, int Intervals, int Missing)
{
    /// <summary>Last local day, included.</summary>
    public LocalDate Last => First.PlusYears(1).PlusDays(-1);

    /// <summary>Share of the intervals that is known. [unitless, 0–1]</summary>
    public double KnownShare => (Intervals - Missing) / (double)Intervals;
}
