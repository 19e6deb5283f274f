namespace RetrofitCalc.Engine.Uncertainty.Distributions;

/// <summary>Normal distribution. Without ends: for what cannot be negative take the lognormal or three numbers.</summary>
public sealed record NormalDistribution : InputDistribution
{
    /// <summary>From mean and standard deviation.</summary>
    /// <param name="mean">Mean.</param>
    /// <param name="standardDeviation">Standard deviation; zero or more.</param>
    /// <exception cref="ArgumentException">A number is missing, or the deviation is negative.</exception>
    public NormalDistribution(double mean, double standardDeviation)
    {
        Refuse(Problem(mean, standardDeviation));
        (Mean, StandardDeviation) = (mean, standardDeviation);
    }

    /// <inheritdoc/>
    public override double Mean { get; }

    /// <inheritdoc/>
    public override double StandardDeviation { get; }

    /// <summary>The distribution of which four in five lie within a range: P10 and P90.</summary>
    /// <param name="low">Below it lies one in ten.</param>
    /// <param name="high">Above it lies one in ten; not below <paramref name="low"/>.</param>
    /// <exception cref="ArgumentException">They are not in order, or not numbers.</exception>
    public static NormalDistribution OfRange(double low, double high)
    {
        Refuse(OrderProblem(low, low, high));
        return new(low + (high - low) / 2, (high - low) / 2 / StandardNormal.NinetyPercent);
    }

    /// <summary>What is wrong with the numbers, in plain words; null when nothing is.</summary>
    /// <param name="mean">Mean.</param>
    /// <param name="standardDeviation">Standard deviation.</param>
    public static string? Problem(double mean, double standardDeviation) => (mean, standardDeviation) switch
    {
        _ when !double.IsFinite(mean) || !double.IsFinite(standardDeviation) => "Mean and standard deviation must be numbers.",
        _ when standardDeviation < 0 => $"The standard deviation ({standardDeviation}) must be zero or more.",
        _ => null,
    };

    /// <inheritdoc/>
    protected override double QuantileOf(double chance) => Mean + StandardDeviation * StandardNormal.Quantile(chance);
}
