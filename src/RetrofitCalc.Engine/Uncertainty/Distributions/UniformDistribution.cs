namespace RetrofitCalc.Engine.Uncertainty.Distributions;

/// <summary>Anything from low to high, all alike.</summary>
public sealed record UniformDistribution : InputDistribution
{
    /// <summary>From two numbers.</summary>
    /// <param name="low">Lowest possible.</param>
    /// <param name="high">Highest possible.</param>
    /// <exception cref="ArgumentException">They are not in order, or not numbers.</exception>
    public UniformDistribution(double low, double high)
    {
        Refuse(Problem(low, high));
        (Low, High) = (low, high);
    }

    /// <summary>Lowest possible.</summary>
    public double Low { get; }

    /// <summary>Highest possible.</summary>
    public double High { get; }

    /// <inheritdoc/>
    public override double Mean => (Low + High) / 2;

    /// <inheritdoc/>
    public override double StandardDeviation => (High - Low) / Math.Sqrt(12);

    /// <summary>What is wrong with two numbers, in plain words; null when nothing is.</summary>
    /// <param name="low">Lowest possible.</param>
    /// <param name="high">Highest possible.</param>
    public static string? Problem(double low, double high) => OrderProblem(low, low, high);

    /// <inheritdoc/>
    protected override double QuantileOf(double chance) => Low + chance * (High - Low);
}
