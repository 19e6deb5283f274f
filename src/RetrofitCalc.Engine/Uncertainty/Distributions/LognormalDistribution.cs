namespace RetrofitCalc.Engine.Uncertainty.Distributions;

/// <summary>Lognormal distribution: twice as much is as likely as half as much. Always above zero.</summary>
public sealed record LognormalDistribution : InputDistribution
{
    /// <summary>From the median and the spread of the logarithm.</summary>
    /// <param name="median">Median; above zero.</param>
    /// <param name="logDeviation">Standard deviation of the natural logarithm; zero or more. [unitless]</param>
    /// <exception cref="ArgumentException">The median is not above zero, or the spread is negative.</exception>
    public LognormalDistribution(double median, double logDeviation)
    {
        Refuse(Problem(median, logDeviation));
        (Median, LogDeviation) = (median, logDeviation);
    }

    /// <summary>Median.</summary>
    public double Median { get; }

    /// <summary>Standard deviation of the natural logarithm. [unitless]</summary>
    public double LogDeviation { get; }

    /// <inheritdoc/>
    public override double Mean => Median * Math.Exp(LogDeviation * LogDeviation / 2);

    /// <inheritdoc/>
    public override double StandardDeviation => Mean * Math.Sqrt(Math.Exp(LogDeviation * LogDeviation) - 1);

    /// <summary>The distribution of which four in five lie within a range: P10 and P90.</summary>
    /// <param name="low">Below it lies one in ten; above zero.</param>
    /// <param name="high">Above it lies one in ten; not below <paramref name="low"/>.</param>
    /// <exception cref="ArgumentException">They are not in order, or not above zero.</exception>
    public static LognormalDistribution OfRange(double low, double high)
    {
        Refuse(OrderProblem(low, low, high) ?? Problem(low, 0));
        return new(Math.Sqrt(low) * Math.Sqrt(high), Math.Log(high / low) / 2 / StandardNormal.NinetyPercent);
    }

    /// <summary>What is wrong with the numbers, in plain words; null when nothing is.</summary>
    /// <param name="median">Median.</param>
    /// <param name="logDeviation">Standard deviation of the natural logarithm.</param>
    public static string? Problem(double median, double logDeviation) => (median, logDeviation) switch
    {
        _ when !double.IsFinite(median) || !double.IsFinite(logDeviation) => "Median and spread must be numbers.",
        _ when median <= 0 => $"The median ({median}) must be above zero.",
        _ when logDeviation < 0 => $"The spread ({logDeviation}) must be zero or more.",
        _ => null,
    };

    /// <inheritdoc/>
    protected override double QuantileOf(double chance) => Median * Math.Exp(LogDeviation * StandardNormal.Quantile(chance));
}
