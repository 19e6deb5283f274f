using NodaTime;
using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Billing;

/// <summary>Which charges apply when on one day of a tariff, by the wall clock.</summary>
public static class TariffDay
{
    /// <summary>Whether the tariff bills a day as a weekend day: Saturday, Sunday or a holiday.</summary>
    /// <param name="tariff">The tariff.</param>
    /// <param name="day">The day.</param>
    public static bool IsWeekend(Tariff tariff, LocalDate day) =>
        day.DayOfWeek is IsoDayOfWeek.Saturday or IsoDayOfWeek.Sunday || tariff.Holidays.Any(h => h.IsOn(day));

    /// <summary>Whether a charge is in force on a day.</summary>
    /// <param name="when">When the charge applies.</param>
    /// <param name="day">The day.</param>
    public static bool InForce(TariffHours when, LocalDate day) =>
        when.Start is not { } start || when.End is not { } end || SeasonCalendar.Covers(start, end, day);

    /// <summary>The day whose season holds on a day of a billing month: pass it to <see cref="InForce"/>. Weekdays and holidays stay those of the day itself.</summary>
    /// <param name="change">How the tariff bills a season that covers the month in part.</param>
    /// <param name="day">The day.</param>
    /// <param name="first">First day of the billing month.</param>
    /// <param name="last">Last day of the billing month, included.</param>
    public static LocalDate SeasonDay(SeasonChange change, LocalDate day, LocalDate first, LocalDate last) => change switch
    {
        SeasonChange.SeasonOfFirstDay => first,
        SeasonChange.SeasonOfLastDay => last,
        _ => day,
    };

    /// <summary>
    /// The day cut where charges change, with the energy charges that claim each piece: exactly one in a sound tariff.
    /// A charge without windows takes what no charge with windows claims.
    /// </summary>
    /// <param name="charges">All energy charges.</param>
    /// <param name="inForce">Which of them are in force on the day.</param>
    /// <param name="weekend">Whether the day is billed as a weekend day.</param>
    public static IReadOnlyList<TariffPiece> Pieces(IReadOnlyList<EnergyCharge> charges, IReadOnlyList<bool> inForce, bool weekend)
    {
        var windows = (
            from index in Enumerable.Range(0, charges.Count)
            where inForce[index]
            from window in charges[index].When.Windows
            where AppliesOn(window.Days, weekend)
            select (Index: index, From: Tick(window.From), To: EndTick(window.To))).ToList();
        long[] cuts = [.. windows.SelectMany(w => new[] { w.From, w.To }).Append(0).Append(NodaConstants.TicksPerDay).Distinct().Order()];
        int[] rest = [.. Enumerable.Range(0, charges.Count).Where(index => inForce[index] && charges[index].When.Windows.Count == 0)];
        var pieces = new List<TariffPiece>();
        for (var i = 0; i + 1 < cuts.Length; i++)
        {
            int[] claims = [.. windows.Where(w => w.From <= cuts[i] && w.To >= cuts[i + 1]).Select(w => w.Index).Distinct()];
            pieces.Add(new(cuts[i], cuts[i + 1], claims.Length > 0 ? claims : rest));
        }
        return pieces;
    }

    /// <summary>Spans of a day in which a demand charge counts load: its windows, or the whole day when it has none.</summary>
    /// <param name="when">When the charge applies.</param>
    /// <param name="weekend">Whether the day is billed as a weekend day.</param>
    public static IEnumerable<(long From, long To)> DemandSpans(TariffHours when, bool weekend) =>
        when.Windows.Count == 0
            ? [(0, NodaConstants.TicksPerDay)]
            : when.Windows.Where(w => AppliesOn(w.Days, weekend)).Select(w => (Tick(w.From), EndTick(w.To)));

    /// <summary>Wall time of a tick of the day; the last tick is the next midnight.</summary>
    /// <param name="day">The day.</param>
    /// <param name="tick">Ticks after midnight.</param>
    public static LocalDateTime WallTime(LocalDate day, long tick) =>
        tick >= NodaConstants.TicksPerDay ? day.PlusDays(1).AtMidnight() : day + LocalTime.FromTicksSinceMidnight(tick);

    private static bool AppliesOn(DayKind days, bool weekend) => days == DayKind.All || (days == DayKind.Weekend) == weekend;

    private static long Tick(LocalTime time) => time.TickOfDay;

    private static long EndTick(LocalTime time) => time == LocalTime.Midnight ? NodaConstants.TicksPerDay : time.TickOfDay;
}

/// <summary>A piece of a day with the same charges.</summary>
/// <param name="From">Start. [ticks after midnight]</param>
/// <param name="To">End. [ticks after midnight]</param>
/// <param name="Claims">Indexes of the energy charges that claim it: one in a sound tariff; none is a gap, more an overlap.</param>
public readonly record struct TariffPiece(long From, long To, IReadOnlyList<int> Claims);
