namespace RetrofitCalc.Engine.Operation;

/// <summary>The year of the whole site as a row of segments; within each, every area stays dark or in one mode.</summary>
/// <remarks>
/// A "slot" is one mode of one area, numbered through the site. A "state" names the slot each area is in. Load is constant within a
/// segment, so peaks and sums over segments are exact.
/// </remarks>
public sealed class SiteTimeline
{
    /// <summary>Slot of an area that is dark.</summary>
    public const int Dark = -1;

    private readonly List<int[]> _states = [];
    private readonly List<long> _starts = [];
    private readonly List<int> _stateOf = [];

    /// <summary>Lays the areas' spells over each other.</summary>
    /// <param name="areas">Operation of each area.</param>
    /// <param name="firstSlot">Number of the first slot of each area; slots follow the order of its modes.</param>
    /// <param name="year">The year.</param>
    public SiteTimeline(IReadOnlyList<AreaOperation> areas, IReadOnlyList<int> firstSlot, SiteYear year)
    {
        Year = year;
        var known = new Dictionary<int[], int>(new SameSlots());
        var current = new int[areas.Count];
        Array.Fill(current, Dark);
        var start = year.Start;
        foreach (var (time, area, slot) in Switchings(areas, firstSlot))
        {
            if (time > start)
                Close(start, current, known);
            start = Math.Max(start, time);
            current[area] = slot;
        }
        if (start < year.End)
            Close(start, current, known);
        Hours = StateHours();
    }

    /// <summary>The year at the site's clock.</summary>
    public SiteYear Year { get; }

    /// <summary>Distinct states: the slot each area is in, or <see cref="Dark"/>.</summary>
    public IReadOnlyList<IReadOnlyList<int>> States => _states;

    /// <summary>Hours of the year in each state. [h]</summary>
    public IReadOnlyList<double> Hours { get; }

    /// <summary>Segments. [count]</summary>
    public int Count => _starts.Count;

    /// <summary>First instant of a segment. [s since 1970]</summary>
    /// <param name="segment">Index of the segment.</param>
    public long StartOf(int segment) => _starts[segment];

    /// <summary>Instant after the last of a segment. [s since 1970]</summary>
    /// <param name="segment">Index of the segment.</param>
    public long EndOf(int segment) => segment + 1 < _starts.Count ? _starts[segment + 1] : Year.End;

    /// <summary>State of a segment.</summary>
    /// <param name="segment">Index of the segment.</param>
    public int StateOf(int segment) => _stateOf[segment];

    /// <summary>Segment that holds an instant.</summary>
    /// <param name="instant">An instant within the year. [s since 1970]</param>
    public int SegmentAt(long instant)
    {
        var found = _starts.BinarySearch(instant);
        return found >= 0 ? found : ~found - 1;
    }

    private static IEnumerable<(long Time, int Area, int Slot)> Switchings(IReadOnlyList<AreaOperation> areas, IReadOnlyList<int> firstSlot)
    {
        var switchings = new List<(long Time, int Area, int Slot)>();
        for (var area = 0; area < areas.Count; area++)
        {
            var slots = areas[area].Modes.Select((mode, index) => (mode, index)).ToDictionary(pair => pair.mode, pair => firstSlot[area] + pair.index);
            foreach (var spell in areas[area].Spells)
            {
                switchings.Add((spell.Start, area, slots[spell.Mode]));
                switchings.Add((spell.End, area, Dark));
            }
        }
        // At one instant, off before on: a spell that ends where the next begins leaves no gap.
        switchings.Sort((a, b) => a.Time != b.Time ? a.Time.CompareTo(b.Time) : (a.Slot != Dark).CompareTo(b.Slot != Dark));
        return switchings;
    }

    private void Close(long start, int[] current, Dictionary<int[], int> known)
    {
        if (!known.TryGetValue(current, out var state))
        {
            state = _states.Count;
            int[] copy = [.. current];
            _states.Add(copy);
            known[copy] = state;
        }
        if (_stateOf.Count > 0 && _stateOf[^1] == state)
            return;
        _starts.Add(start);
        _stateOf.Add(state);
    }

    private double[] StateHours()
    {
        var hours = new double[_states.Count];
        for (var segment = 0; segment < Count; segment++)
            hours[_stateOf[segment]] += (EndOf(segment) - StartOf(segment)) / 3600.0;
        return hours;
    }

    private sealed class SameSlots : IEqualityComparer<int[]>
    {
        public bool Equals(int[]? x, int[]? y) => x.AsSpan().SequenceEqual(y);

        public int GetHashCode(int[] slots)
        {
            var hash = 17;
            foreach (var slot in slots)
                hash = unchecked(hash * 31 + slot);
            return hash;
        }
    }
}
