namespace RetrofitCalc.Reports;

/// <summary>Round values for an axis, zero among them.</summary>
internal static class AxisTicks
{
    private const int AboutHowMany = 4;

    public static IReadOnlyList<double> For(double lowest, double highest)
    {
        var (low, high) = (Math.Min(0, lowest), Math.Max(0, highest));
        if (high - low <= 0) return [0];
        var step = Round((high - low) / AboutHowMany);
        var first = Math.Floor(low / step);
        var count = (int)(Math.Ceiling(high / step) - first) + 1;
        return [.. Enumerable.Range(0, count).Select(i => (first + i) * step)];
    }

    /// <summary>The next 1, 2 or 5 times a power of ten.</summary>
    private static double Round(double step)
    {
        var power = Math.Pow(10, Math.Floor(Math.Log10(step)));
        var digit = step / power;
        return power * (digit <= 1 ? 1 : digit <= 2 ? 2 : digit <= 5 ? 5 : 10);
    }
}
