using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Billing;

/// <summary>
/// Every distinct load that a demand charge could bill in one month, found once: states that fill a whole averaging window, and
/// mixtures in windows during which something switches, each with the highest metered average among its windows. The peak of any
/// case is the highest of these.
/// </summary>
public sealed class DemandWindows
{
    private readonly SiteTimeline _site;
    private readonly MeterLoad? _meter;
    private readonly Dictionary<int, double> _whole = [];
    private readonly Dictionary<string, Mixture> _mixed = [];

    /// <summary>Finds the windows of one charge in one month.</summary>
    /// <param name="windowMinutes">Length of the averaging window. [min]</param>
    /// <param name="spans">Spans in which load counts, within the month. [s since 1970]</param>
    /// <param name="site">The site's year.</param>
    /// <param name="meter">The meter; null without one: then nothing is metered.</param>
    public DemandWindows(int windowMinutes, IReadOnlyList<(long From, long To)> spans, SiteTimeline site, MeterLoad? meter)
    {
        (_site, _meter) = (site, meter);
        var window = windowMinutes * 60L;
        foreach (var (from, to) in spans)
        {
            var at = from;
            while (at < to)
            {
                // Windows are aligned to the wall clock: the first may be short where the clocks change by less than a window.
                var intoWindow = site.Year.SecondOfDay(at) % window;
                at = Sweep(at, intoWindow == 0 ? to : Math.Min(to, at + window - intoWindow), window);
            }
        }
    }

    /// <summary>Whether the charge counts load at any time of the month.</summary>
    public bool InForce => _whole.Count > 0 || _mixed.Count > 0;

    /// <summary>Highest window average, and what lighting draws in that window; the total is never below zero. [kW]</summary>
    /// <param name="added">Load in each state of the site on top of what is metered. [kW]</param>
    /// <param name="lighting">Lighting and its plant in each state. [kW]</param>
    public (double Total, double Lighting) Highest(double[] added, double[] lighting)
    {
        var (peak, whole, mixture) = (double.NegativeInfinity, -1, (Mixture?)null);
        foreach (var (state, metered) in _whole)
            if (metered + added[state] > peak)
                (peak, whole) = (metered + added[state], state);
        foreach (var each in _mixed.Values)
            if (each.Metered + each.Average(added) is var total && total > peak)
                (peak, mixture) = (total, each);
        return (Math.Max(0, peak), mixture?.Average(lighting) ?? (whole < 0 ? 0 : lighting[whole]));
    }

    /// <summary>Walks windows from an aligned instant; runs of windows without switching are taken in one step.</summary>
    private long Sweep(long from, long to, long window)
    {
        var segment = _site.SegmentAt(from);
        while (from < to)
        {
            while (_site.EndOf(segment) <= from)
                segment++;
            var end = Math.Min(from + window, to);
            if (_site.EndOf(segment) >= end)
            {
                end += Math.Max(0, (Math.Min(_site.EndOf(segment), to) - end) / window) * window;
                AddWhole(_site.StateOf(segment), from, end, window);
            }
            else
                AddMixed(from, end, segment);
            from = end;
        }
        return to;
    }

    private void AddWhole(int state, long from, long to, long window)
    {
        var highest = _whole.GetValueOrDefault(state, _meter is null ? 0 : double.NegativeInfinity);
        if (_meter is not null)
            highest = Math.Max(highest, _meter.HighestAverage(from, to, window));
        _whole[state] = highest;
    }

    private void AddMixed(long from, long to, int segment)
    {
        var parts = new List<(int State, double Share)>();
        for (; segment < _site.Count && _site.StartOf(segment) < to; segment++)
        {
            var seconds = Math.Min(to, _site.EndOf(segment)) - Math.Max(from, _site.StartOf(segment));
            parts.Add((_site.StateOf(segment), seconds / (double)(to - from)));
        }
        var key = string.Join(' ', parts);
        if (!_mixed.TryGetValue(key, out var mixture))
            _mixed[key] = mixture = new([.. parts]) { Metered = _meter is null ? 0 : double.NegativeInfinity };
        if (_meter is not null)
            mixture.Metered = Math.Max(mixture.Metered, _meter.Average(from, to));
    }

    private sealed class Mixture((int State, double Share)[] parts)
    {
        public double Metered { get; set; }

        public double Average(double[] kilowatts)
        {
            var average = 0.0;
            foreach (var (state, share) in parts)
                average += kilowatts[state] * share;
            return average;
        }
    }
}
