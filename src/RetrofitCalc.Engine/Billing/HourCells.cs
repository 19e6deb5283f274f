using NodaTime;
using RetrofitCalc.Engine.Checks;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Billing;

/// <summary>Which of a list of hours hold in each month and hour of the day, weekdays and weekends apart: 2 × 12 × 24 cells of places in that list.</summary>
public sealed class HourCells
{
    /// <summary>Stands in rows where nothing holds.</summary>
    public const int Nothing = -1;

    private const int Months = 12;
    private const int Hours = 24;

    // A year without a leap day; months are whole, so any day of a month tells what holds in it.
    private const int AnyYear = 2027;
    private readonly IReadOnlyList<int>[] _cells;

    private HourCells(IReadOnlyList<int>[] cells) => _cells = cells;

    /// <summary>Cells of hours, of which those without windows take what the others leave, as energy charges do; null when one of them does not fit.</summary>
    /// <param name="hours">Dates and windows.</param>
    public static HourCells? Of(IReadOnlyList<TariffHours> hours)
    {
        if (hours.Any(when => Misfits("", when).Any()))
            return null;
        var charges = hours.Select(when => new EnergyCharge { Name = "", When = when, Blocks = [] }).ToList();
        var cells = new IReadOnlyList<int>[2 * Months * Hours];
        foreach (var weekend in new[] { false, true })
            for (var month = 1; month <= Months; month++)
                foreach (var piece in TariffDay.Pieces(charges, [.. hours.Select(when => HoldsIn(when, month))], weekend))
                    for (var tick = piece.From; tick < piece.To; tick += NodaConstants.TicksPerHour)
                        cells[Cell(weekend, month, (int)(tick / NodaConstants.TicksPerHour))] = piece.Claims;
        return new(cells);
    }

    /// <summary>Cells of demand charges, of which those without windows count load in all hours beside the others; null when one of them does not fit.</summary>
    /// <param name="charges">Demand charges.</param>
    public static HourCells? Of(IReadOnlyList<DemandCharge> charges) => Of([.. charges.Select(charge => charge.When.Windows.Count > 0
        ? charge.When
        : charge.When with { Windows = [new(DayKind.All, LocalTime.Midnight, LocalTime.Midnight)] })]);

    /// <summary>Cells from twelve rows of 24 hours for each kind of day, January and midnight first.</summary>
    /// <param name="weekday">Places on weekdays, or <see cref="Nothing"/>. [0-based]</param>
    /// <param name="weekend">Places on weekends and holidays, or <see cref="Nothing"/>. [0-based]</param>
    /// <exception cref="ArgumentException">Not twelve rows of 24.</exception>
    public static HourCells FromRows(IReadOnlyList<IReadOnlyList<int>> weekday, IReadOnlyList<IReadOnlyList<int>> weekend)
    {
        if (weekday.Count != Months || weekend.Count != Months || weekday.Concat(weekend).Any(row => row.Count != Hours))
            throw new ArgumentException("There are twelve rows of 24 hours for each kind of day.", nameof(weekday));
        return new([.. weekday.Concat(weekend).SelectMany(row => row).Select(place => (IReadOnlyList<int>)(place == Nothing ? [] : [place]))]);
    }

    /// <summary>Twelve rows of 24 hours, January and midnight first; null where two or more hold at once. <see cref="Nothing"/> in gaps.</summary>
    /// <param name="weekend">Weekends and holidays, or weekdays.</param>
    public IReadOnlyList<IReadOnlyList<int>>? Rows(bool weekend)
    {
        if (_cells.Any(places => places.Count > 1))
            return null;
        return [.. Enumerable.Range(1, Months).Select(month => (IReadOnlyList<int>)
            [.. Enumerable.Range(0, Hours).Select(hour => At(weekend, month, hour) is [var place] ? place : Nothing)])];
    }

    /// <summary>Places of what holds in a cell. [0-based]</summary>
    /// <param name="weekend">Weekends and holidays, or weekdays.</param>
    /// <param name="month">Month. [1–12]</param>
    /// <param name="hour">Hour that begins then. [0–23]</param>
    /// <exception cref="ArgumentOutOfRangeException">No such month or hour.</exception>
    public IReadOnlyList<int> At(bool weekend, int month, int hour)
    {
        Require.InRange(month, 1, Months);
        Require.InRange(hour, 0, Hours - 1);
        return _cells[Cell(weekend, month, hour)];
    }

    /// <summary>Cells of another list.</summary>
    /// <param name="place">Place in the other list of a place in this one.</param>
    public HourCells Moved(Func<int, int> place) => new([.. _cells.Select(places => (IReadOnlyList<int>)[.. places.Select(place)])]);

    /// <summary>One place, and no other, in a block of months and hours.</summary>
    /// <param name="place">The place. [0-based]</param>
    /// <param name="days">Kind of day.</param>
    /// <param name="months">First and last month, included; the last may lie before the first and so cross New Year. [1–12]</param>
    /// <param name="hours">First and last hour, included; the last may lie before the first and so cross midnight. [0–23]</param>
    public HourCells Paint(int place, DayKind days, (int First, int Last) months, (int First, int Last) hours)
    {
        IReadOnlyList<int> claim = [place];
        var cells = _cells.ToArray();
        foreach (var weekend in days switch { DayKind.Weekday => new[] { false }, DayKind.Weekend => [true], _ => [false, true] })
            for (var month = 1; month <= Months; month++)
                for (var hour = 0; hour < Hours; hour++)
                    if (IsWithin(month, months) && IsWithin(hour, hours))
                        cells[Cell(weekend, month, hour)] = claim;
        return new(cells);
    }

    /// <summary>Dates and windows in which a place holds: one for each run of months with equal hours, across New Year too; none when it holds nowhere.</summary>
    /// <param name="place">The place. [0-based]</param>
    public IEnumerable<TariffHours> When(int place) => HourRuns.Of(month => new(Mask(place, false, month), Mask(place, true, month)));

    /// <summary>Why hours have no cells: they begin or end within a month or within an hour. Nothing when they fit.</summary>
    /// <param name="name">Name of the charge.</param>
    /// <param name="when">Its hours.</param>
    public static IEnumerable<string> Misfits(string name, TariffHours when)
    {
        if (when.Start is null != when.End is null)
            yield return $"\"{name}\" has only one of first and last day.";
        if (when.Start is { Day: not 1 } start)
            yield return $"\"{name}\" begins on {CheckText.Day(start.InYear(AnyYear))}, within a month.";
        // 28 February ends the month too: it is what a reader without leap years in mind types.
        if (when.End is { } end && end.InYear(AnyYear).PlusDays(1).Day != 1)
            yield return $"\"{name}\" ends on {CheckText.Day(end.InYear(AnyYear))}, within a month.";
        foreach (var (_, from, to) in when.Windows.Where(window => !IsWholeHour(window.From) || !IsWholeHour(window.To)))
            yield return $"\"{name}\" holds from {CheckText.Time(from)} to {CheckText.Time(to)}, which is not on whole hours.";
        foreach (var (_, from, to) in when.Windows.Where(window => window.To != LocalTime.Midnight && window.To <= window.From))
            yield return $"\"{name}\" holds from {CheckText.Time(from)} to {CheckText.Time(to)}, which is backwards.";
    }

    private static bool HoldsIn(TariffHours when, int month) => TariffDay.InForce(when, new LocalDate(AnyYear, month, 15));

    private int Mask(int place, bool weekend, int month) =>
        Enumerable.Range(0, Hours).Where(hour => At(weekend, month, hour).Contains(place)).Sum(hour => 1 << hour);

    private static int Cell(bool weekend, int month, int hour) => ((weekend ? Months : 0) + month - 1) * Hours + hour;

    private static bool IsWithin(int value, (int First, int Last) range) =>
        range.First <= range.Last ? value >= range.First && value <= range.Last : value >= range.First || value <= range.Last;

    private static bool IsWholeHour(LocalTime time) => time.TickOfDay % NodaConstants.TicksPerHour == 0;
}
