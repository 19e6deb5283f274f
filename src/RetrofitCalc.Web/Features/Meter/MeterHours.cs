using NodaTime;
using RetrofitCalc.Engine.Metering;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Web.Features.Meter;

/// <summary>A meter year by day and hour of the local clock.</summary>
public sealed class MeterHours
{
    public const int HoursOfDay = 24;

    private MeterHours(LocalDate first, Cell[,] cells) => (First, Cells) = (first, cells);

    public LocalDate First { get; }

    /// <summary>By day from the first, and hour. The hour the clocks skip stays empty; the hour that comes twice holds both.</summary>
    public Cell[,] Cells { get; }

    public int Days => Cells.GetLength(0);

    /// <summary>Average of an hour, and whether any of it was filled.</summary>
    public struct Cell
    {
        private double _watts;
        private int _count;

        /// <summary>Average load; null when nothing is known. [W]</summary>
        public readonly double? Watts => _count == 0 ? null : _watts / _count;

        public bool Filled { get; private set; }

        internal void Add(double watts, bool filled) => (_watts, _count, Filled) = (_watts + watts, _count + 1, Filled || filled);
    }

    public static MeterHours Of(MeterYear year, DateTimeZone zone)
    {
        var filled = new bool[year.Watts.Count];
        foreach (var gap in year.Filled) Array.Fill(filled, true, gap.First, gap.Count);
        var times = MeterTimes.Of(year, zone).ToList();
        var cells = new Cell[times.Count == 0 ? 0 : Period.DaysBetween(year.FirstDay, times[^1].Date) + 1, HoursOfDay];
        foreach (var (time, i) in times.Select((time, i) => (time, i)))
            if (year.Watts[i] is { } watts)
                cells[Period.DaysBetween(year.FirstDay, time.Date), time.Hour].Add(watts, filled[i]);
        return new MeterHours(year.FirstDay, cells);
    }

    /// <summary>Average load of each hour of the day in each month, in order of time.</summary>
    public IReadOnlyList<(YearMonth Month, IReadOnlyList<double?> Watts)> ByMonth() =>
        [.. Enumerable.Range(0, Days).GroupBy(day => First.PlusDays(day).ToYearMonth())
            .Select(month => (month.Key, (IReadOnlyList<double?>)[.. Enumerable.Range(0, HoursOfDay).Select(hour => month.Average(day => Cells[day, hour].Watts))]))];

    /// <summary>The highest hour; null when nothing is known.</summary>
    public (LocalDateTime At, double Watts)? Highest()
    {
        (LocalDateTime At, double Watts)? highest = null;
        foreach (var (day, hour) in Places())
            if (Cells[day, hour].Watts is { } watts && !(watts <= highest?.Watts))
                highest = (First.PlusDays(day).At(new LocalTime(hour, 0)), watts);
        return highest;
    }

    /// <summary>Every day and hour, day by day.</summary>
    public IEnumerable<(int Day, int Hour)> Places() =>
        from day in Enumerable.Range(0, Days) from hour in Enumerable.Range(0, HoursOfDay) select (day, hour);
}
