using NodaTime;
using RetrofitCalc.Engine.Metering;
using RetrofitCalc.Files.Surveys.Tables;

namespace RetrofitCalc.Files.Meters.Tables;

/// <summary>Turns rows into instants and values, one by one; the rows themselves are not kept.</summary>
internal sealed class StampReader(MeterLayout layout, DateTimeZone zone) : TableSink
{
    private const int MinutesOfDay = 1440;
    private readonly LocalStamps _stamps = new(ClockOf(layout.Clock, zone));

    /// <summary>Instant, value and line of each reading, in the order of the file.</summary>
    public List<(long Instant, double Value, int Line, ReadingMarks Marks)> Read { get; } = [];

    public List<FileProblem> Unread { get; } = [];

    public int UnreadCount { get; private set; }

    public override bool Add(int line, IReadOnlyList<string> row)
    {
        if (line < layout.FirstLine || row.All(string.IsNullOrWhiteSpace)) return true;
        if (layout.IsDayPerRow) AddDay(line, row);
        else AddReading(line, row);
        if (Read.Count > MeterLimits.Readings || UnreadCount > MeterLimits.Readings) Refusal = MeterLimits.TooManyReadings;
        return Refusal is null;
    }

    private void AddReading(int line, IReadOnlyList<string> row)
    {
        var value = Cell(row, layout.ValueColumns[0]);
        if (string.IsNullOrWhiteSpace(value)) Miss(line, layout.ValueColumns[0], "The value is blank.");
        else if (MeterNumber.Parse(value, layout.DecimalMark) is not { } number) Miss(line, layout.ValueColumns[0], $"{CellText.Quote(value)} is not a number.");
        else if (StampOf(row) is not { Wall: { } wall } stamp) Miss(line, layout.StampColumn, $"{CellText.Quote(Cell(row, layout.StampColumn))} is not a date and time.");
        else Keep(wall, stamp.Offset, number, line);
    }

    private Stamp? StampOf(IReadOnlyList<string> row)
    {
        if (StampText.Parse(Cell(row, layout.StampColumn), layout.Dates) is not { Date: not null } stamp) return null;
        if (layout.TimeColumn is not { } column) return stamp;
        var text = Cell(row, column);
        if (StampText.Parse(text, layout.Dates) is { Time: not null } time) return stamp with { Time = time.Time, EndsDay = time.EndsDay, Offset = time.Offset };
        return MeterNumber.Parse(text, layout.DecimalMark) is >= 0 and < 1 and var share ? stamp with { Time = LocalTime.FromSecondsSinceMidnight((int)(Math.Round(share * MinutesOfDay) % MinutesOfDay) * 60) } : null;
    }

    private void AddDay(int line, IReadOnlyList<string> row)
    {
        if (StampText.Parse(Cell(row, layout.StampColumn), layout.Dates) is not { Date: { } day })
        {
            Miss(line, layout.StampColumn, $"{CellText.Quote(Cell(row, layout.StampColumn))} is not a date.");
            return;
        }
        var minutes = MinutesOfDay / layout.ValueColumns.Count;
        foreach (var (index, column) in layout.ValueColumns.Index())
        {
            var text = Cell(row, column);
            if (MeterNumber.Parse(text, layout.DecimalMark) is { } number) Keep(day.At(LocalTime.Midnight).PlusMinutes(index * minutes), null, number, line);
            else if (!string.IsNullOrWhiteSpace(text)) Miss(line, column, $"{CellText.Quote(text)} is not a number.");
        }
    }

    private void Keep(LocalDateTime wall, Offset? offset, double value, int line)
    {
        if (offset is { } ahead)
        {
            Read.Add((wall.WithOffset(ahead).ToInstant().ToUnixTimeSeconds(), value, line, ReadingMarks.None));
            return;
        }
        var (instant, marks) = _stamps.Next(wall);
        // A row for each day has a column for the hour the clocks skip; a zero in it is no reading.
        if (layout.IsDayPerRow && marks == ReadingMarks.NoSuchLocalTime && value == 0) return;
        Read.Add((instant, value, line, marks));
    }

    private void Miss(int line, int column, string message)
    {
        UnreadCount++;
        if (Unread.Count < MeterLimits.ProblemsNamed) Unread.Add(new(line, column + 1, "", message));
    }

    private static string Cell(IReadOnlyList<string> row, int column) => column < row.Count ? row[column] : "";

    private static DateTimeZone ClockOf(StampClock clock, DateTimeZone zone) => clock switch
    {
        StampClock.Utc => DateTimeZone.Utc,
        StampClock.SiteStandard => DateTimeZone.ForOffset(zone.GetZoneInterval(Instant.FromUtc(2026, 1, 1, 0, 0)).StandardOffset),
        _ => zone,
    };
}
