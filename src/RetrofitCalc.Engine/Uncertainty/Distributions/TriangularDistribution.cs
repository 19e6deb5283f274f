namespace RetrofitCalc.Engine.Uncertainty.Distributions;

/// <summary>From low over likely to high in straight lines: the plainest reading of three numbers.</summary>
public sealed record TriangularDistribution : InputDistribution
{
    /// <summary>From three numbers.</summary>
    /// <param name="low">Lowest possible.</param>
    /// <param name="likely">Most likely.</param>
    /// <param name="high">Highest possible.</param>
    /// <exception cref="ArgumentException">They are not in order, or not numbers.</exception>
    public TriangularDistribution(double low, double likely, double high)
    {
        Refuse(Problem(low, likely, high));
        (Low, Likely, High) = (low, likely, high);
    }

    /// <summary>Lowest possible.</summary>
    public double Low { get; }

    /// <summary>Most likely.</summary>
    public double Likely { get; }

    /// <summary>Highest possible.</summary>
    public double High { get; }

    /// <inheritdoc/>
    public override double Mean => (Low + Likely + High) / 3;

    /// <inheritdoc/>
    public override double StandardDeviation =>
        Math.Sqrt(Math.Max(0, Low * Low + Likely * Likely + High * High - Low * Likely - Low * High - Likely * High) / 18);

    /// <summary>What is wrong with three numbers, in plain words; null when nothing is.</summary>
    /// <param name="low">Lowest possible.</param>
    /// <param name="likely">Most likely.</param>
    /// <param name="high">Highest possible.</param>
    public static string? Problem(double low, double likely, double high) => OrderProblem(low, likely, high);

    /// <inheritdoc/>
    protected override double QuantileOf(double chance)
    {
        var width = High - Low;
        return chance * width <= Likely - Low
            ? Low + Math.Sqrt(chance * width * (Likely - Low))
            : High - Math.Sqrt((1 - chance) * width * (High - Likely));
    }
}
