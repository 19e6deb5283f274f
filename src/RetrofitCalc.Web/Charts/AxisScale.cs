namespace RetrofitCalc.Web.Charts;

/// <summary>Round numbers for the ticks of an axis.</summary>
public static class AxisScale
{
    private static readonly double[] RoundSteps = [1, 2, 2.5, 5, 10];

    /// <summary>An axis that holds zero and the given values, with three to seven ticks.</summary>
    public static ChartAxis Around(double low, double high, Func<double, string> label, string title = "")
    {
        low = Math.Min(low, 0);
        high = Math.Max(high, 0);
        if (high - low <= 0) high = 1;
        var step = StepFor((high - low) / 5);
        var (first, last) = (Math.Floor(low / step), Math.Ceiling(high / step));
        var ticks = Enumerable.Range(0, (int)(last - first) + 1).Select(i => (first + i) * step);
        return new ChartAxis(first * step, last * step, [.. ticks.Select(at => new ChartTick(at, [label(at)]))], title);
    }

    private static double StepFor(double least)
    {
        var power = Math.Pow(10, Math.Floor(Math.Log10(least)));
        return RoundSteps.First(round => round * power >= least * (1 - 1e-9)) * power;
    }
}
