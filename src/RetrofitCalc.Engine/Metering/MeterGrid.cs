namespace RetrofitCalc.Engine.Metering;

/// <summary>Lays readings of any length on an even grid by the time they share with its intervals, so that energy is kept.</summary>
internal static class MeterGrid
{
    /// <summary>A milliwatt: finer than any meter, coarse enough to hide what dividing and multiplying by hours leaves behind.</summary>
    private const int Decimals = 3;

    /// <summary>Average load of each interval; null where readings do not cover all of it. [W]</summary>
    public static double?[] Lay(IReadOnlyList<RawReading> readings, long start, int count, int step)
    {
        var (wattSeconds, covered) = Cover(readings, start, count, step);
        var watts = new double?[count];
        for (var i = 0; i < count; i++)
            watts[i] = covered[i] == step ? Math.Round(wattSeconds[i] / step, Decimals) : null;
        return watts;
    }

    /// <summary>Intervals that readings cover wholly. [count]</summary>
    public static int KnownIn(IReadOnlyList<RawReading> readings, long start, int count, int step) =>
        Cover(readings, start, count, step).Covered.Count(seconds => seconds == step);

    private static (double[] WattSeconds, int[] Covered) Cover(IReadOnlyList<RawReading> readings, long start, int count, int step)
    {
        var (wattSeconds, covered) = (new double[count], new int[count]);
        var end = start + (long)count * step;
        for (var at = FirstEndingAfter(readings, start); at < readings.Count && readings[at].Start < end; at++)
        {
            var reading = readings[at];
            var last = Math.Min(reading.End, end);
            for (var from = Math.Max(reading.Start, start); from < last;)
            {
                var cell = (int)((from - start) / step);
                var until = Math.Min(last, start + (cell + 1L) * step);
                wattSeconds[cell] += reading.Watts * (until - from);
                covered[cell] += (int)(until - from);
                from = until;
            }
        }
        return (wattSeconds, covered);
    }

    private static int FirstEndingAfter(IReadOnlyList<RawReading> readings, long instant)
    {
        var (low, high) = (0, readings.Count);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (readings[middle].End > instant) high = middle;
            else low = middle + 1;
        }
        return low;
    }
}
