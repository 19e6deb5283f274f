using NodaTime;

namespace RetrofitCalc.Engine.Metering;

/// <summary>Counts findings by kind and keeps the first places of each.</summary>
internal sealed class FindingList(DateTimeZone zone)
{
    private const int PlacesKept = 5;
    private readonly Dictionary<MeterFindingKind, (int Count, List<MeterPlace> Places)> _found = [];

    public void Add(MeterFindingKind kind, RawReading reading) => Add(kind, reading.Start, reading.Line, 1);

    public void Add(MeterFindingKind kind, long instant, int line, int count)
    {
        var (before, places) = _found.TryGetValue(kind, out var known) ? known : (0, []);
        if (places.Count < PlacesKept)
            places.Add(new(Instant.FromUnixTimeSeconds(instant).InZone(zone).LocalDateTime, line));
        _found[kind] = (before + count, places);
    }

    public IReadOnlyList<MeterFinding> All() =>
        [.. _found.OrderBy(found => found.Key).Select(found => new MeterFinding(found.Key, found.Value.Count, found.Value.Places, RuleOf(found.Key)))];

    private static string RuleOf(MeterFindingKind kind) => kind switch
    {
        MeterFindingKind.Missing => "Nothing is known of these intervals. They stay unknown until you agree to fill them.",
        MeterFindingKind.SameTwice => "The value was counted once.",
        MeterFindingKind.DifferentTwice => "The value that stands later in the file was taken, as corrections are sent after what they correct.",
        MeterFindingKind.OutOfOrder => "The readings were put in order of time.",
        MeterFindingKind.Overlapping => "The part already covered by the reading before was left out, so that no time counts twice.",
        MeterFindingKind.Negative => "Export was kept as a negative load: it lowers the energy of the hours it falls in, and never sets a peak.",
        MeterFindingKind.NoSuchLocalTime => "The clocks skipped these times. They were read an hour later; if the meter keeps standard time all year, say so and read the file again.",
        MeterFindingKind.RepeatedHour => "The clocks went back: the first reading of such a time was taken before the change, the second after it. Both were kept.",
        MeterFindingKind.OtherLength => "The energy of these readings was spread evenly over the time they speak for; a short peak within a long reading cannot be seen.",
        MeterFindingKind.Estimated => "The file marks these values as estimated, edited or questioned. They were taken as they are.",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Unknown kind of finding."),
    };
}
