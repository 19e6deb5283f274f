using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Billing;

/// <summary>
/// Every distinct load that a demand charge could bill in one month, found once: states that fill a whole averaging window, and
/// mixtures in windows during which something switches. The peak of any case is the highest of these.
/// </summary>
public sealed class DemandWindows
{
    private readonly HashSet<int> _whole = [];
    private readonly Dictionary<string, (int State, double Share)[]> _mixed = [];

    /// <summary>Finds the windows of one charge in one month.</summary>
    /// <param name="charge">The charge.</param>
    /// <param name="spans">Spans in which load counts, within the month. [s since 1970]</param>
    /// <param name="site">The site's year.</param>
    /// <param name="year">The year at the site's clock.</param>
    public DemandWindows(DemandCharge charge, IReadOnlyList<(long From, long To)> spans, SiteTimeline site, SiteYear year)
    {
        var window = charge.WindowMinutes * 60L;
        foreach (var (from, to) in spans)
        {
            var at = from;
            while (at < to)
            {
                // Windows are aligned to the wall clock: the first may be short where the clocks change by less than a window.
                var intoWindow = year.WallTime(at).TimeOfDay.TickOfDay / NodaTime.NodaConstants.TicksPerSecond % window;
                at = Sweep(at, intoWindow == 0 ? to : Math.Min(to, at + window - intoWindow), window, site);
            }
        }
    }

    /// <summary>Whether the charge counts load at any time of the month.</summary>
    public bool InForce => _whole.Count > 0 || _mixed.Count > 0;

    /// <summary>Highest window average.</summary>
    /// <param name="stateKilowatts">Load in each state of the site. [kW]</param>
    public double Peak(ReadOnlySpan<double> stateKilowatts)
    {
        var peakKilowatts = 0.0;
        foreach (var state in _whole)
            peakKilowatts = Math.Max(peakKilowatts, stateKilowatts[state]);
        foreach (var parts in _mixed.Values)
        {
            var averageKilowatts = 0.0;
            foreach (var (state, share) in parts)
                averageKilowatts += stateKilowatts[state] * share;
            peakKilowatts = Math.Max(peakKilowatts, averageKilowatts);
        }
        return peakKilowatts;
    }

    /// <summary>Walks windows from an aligned instant; runs of windows without switching are taken in one step.</summary>
    private long Sweep(long from, long to, long window, SiteTimeline site)
    {
        var segment = site.SegmentAt(from);
        while (from < to)
        {
            while (site.EndOf(segment) <= from)
                segment++;
            var end = Math.Min(from + window, to);
            if (site.EndOf(segment) >= end)
            {
                _whole.Add(site.StateOf(segment));
                from = end + Math.Max(0, (Math.Min(site.EndOf(segment), to) - end) / window) * window;
                continue;
            }
            AddMixed(from, end, segment, site);
            from = end;
        }
        return to;
    }

    private void AddMixed(long from, long to, int segment, SiteTimeline site)
    {
        var parts = new List<(int State, double Share)>();
        for (; segment < site.Count && site.StartOf(segment) < to; segment++)
        {
            var seconds = Math.Min(to, site.EndOf(segment)) - Math.Max(from, site.StartOf(segment));
            parts.Add((site.StateOf(segment), seconds / (double)(to - from)));
        }
        _mixed.TryAdd(string.Join(' ', parts), [.. parts]);
    }
}
