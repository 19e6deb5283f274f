namespace RetrofitCalc.Reports;

/// <summary>Even, round steps that reach from the lowest to the highest value drawn, one for each tint.</summary>
/// <param name="Low">Where the first step begins.</param>
/// <param name="Step">Height of each.</param>
/// <param name="Count">Number of steps. [1 to 7]</param>
public sealed record EvenSteps(double Low, double Step, int Count)
{
    private const int Most = 7;
    private static readonly double[] Round = [1, 2, 2.5, 5, 10];

    /// <summary>Levels between the steps, and none at the two ends.</summary>
    public IReadOnlyList<double> Levels => [.. Enumerable.Range(1, Count - 1).Select(i => Low + i * Step)];

    /// <summary>The finest round steps, seven at most.</summary>
    public static EvenSteps Over(double low, double high)
    {
        var power = Math.Pow(10, Math.Floor(Math.Log10(Math.Max((high - low) / Most, 1e-3))));
        foreach (var step in Round.Concat(Round.Select(round => round * 10)).Select(round => round * power))
        {
            var first = Math.Floor(low / step);
            if (Math.Floor(high / step) - first < Most) return new(first * step, step, (int)(Math.Floor(high / step) - first) + 1);
        }
        throw new ArgumentOutOfRangeException(nameof(high), high, "No step reaches it.");
    }

    /// <summary>The step a value lies in. [0 to Count − 1]</summary>
    public int IndexOf(double value) => Math.Clamp((int)Math.Floor((value - Low) / Step + 1e-9), 0, Count - 1);
}
