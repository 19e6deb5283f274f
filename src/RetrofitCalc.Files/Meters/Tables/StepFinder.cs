namespace RetrofitCalc.Files.Meters.Tables;

/// <summary>Finds how long each reading is from how far its stamp lies from its neighbours'.</summary>
internal static class StepFinder
{
    private const int Around = 8;
    private const double Clear = 0.98;
    private const int LongestSeconds = 3600;

    /// <summary>Length of each reading: the step most common around its own, which comes after a stamp that marks a start and before one that marks an end. In the order of the stamps; null when fewer than two stamps differ. [s]</summary>
    public static int[]? Of(IReadOnlyList<long> stamps, StampMeaning meaning)
    {
        var order = Enumerable.Range(0, stamps.Count).OrderBy(i => stamps[i]).ToArray();
        var steps = new long[Math.Max(0, order.Length - 1)];
        for (var i = 0; i < steps.Length; i++) steps[i] = stamps[order[i + 1]] - stamps[order[i]];
        var counts = steps.Where(step => step > 0).CountBy(step => step).ToList();
        if (counts.Count == 0) return null;
        var common = counts.MaxBy(count => (count.Value, -count.Key));
        var usual = (int)Math.Min(common.Key, 366 * 86_400);
        var lengths = new int[stamps.Count];
        Array.Fill(lengths, usual);
        // Gaps make other steps too; only many short ones tell that the meter changed its interval.
        var shortOnes = counts.Where(count => count.Key <= LongestSeconds).Sum(count => count.Value);
        if (common.Key <= LongestSeconds && common.Value < Clear * shortOnes)
            for (var i = 0; i < order.Length; i++) lengths[order[i]] = CommonAround(steps, meaning == StampMeaning.Start ? i : i - 1, usual);
        return lengths;
    }

    private static int CommonAround(long[] steps, int at, int otherwise)
    {
        var (best, bestCount) = ((long)otherwise, 0);
        var (from, to) = (Math.Max(0, at - Around), Math.Min(steps.Length - 1, at + Around));
        for (var i = from; i <= to; i++)
        {
            if (steps[i] is not (> 0 and <= LongestSeconds)) continue;
            var count = 0;
            for (var other = from; other <= to; other++)
                if (steps[other] == steps[i]) count++;
            if (count > bestCount) (best, bestCount) = (steps[i], count);
        }
        return (int)best;
    }
}
