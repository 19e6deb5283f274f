using MathNet.Numerics.Distributions;

namespace RetrofitCalc.Engine.Uncertainty.Distributions;

/// <summary>Low, likely and high with little weight at the ends: a beta distribution with the mean (low + 4 · likely + high) / 6.</summary>
/// <remarks>S-97: α = 1 + 4 (likely − low)/(high − low), β = 1 + 4 (high − likely)/(high − low).</remarks>
public sealed record PertDistribution : InputDistribution
{
    private const double Weight = 4;

    private readonly double _alpha;
    private readonly double _beta;

    /// <summary>From three numbers.</summary>
    /// <param name="low">Lowest possible.</param>
    /// <param name="likely">Most likely.</param>
    /// <param name="high">Highest possible.</param>
    /// <exception cref="ArgumentException">They are not in order, or not numbers.</exception>
    public PertDistribution(double low, double likely, double high)
    {
        Refuse(Problem(low, likely, high));
        (Low, Likely, High) = (low, likely, high);
        var share = high > low ? (likely - low) / (high - low) : 0.5;
        (_alpha, _beta) = (1 + Weight * share, 1 + Weight * (1 - share));
    }

    /// <summary>Lowest possible.</summary>
    public double Low { get; }

    /// <summary>Most likely.</summary>
    public double Likely { get; }

    /// <summary>Highest possible.</summary>
    public double High { get; }

    /// <inheritdoc/>
    public override double Mean => (Low + Weight * Likely + High) / (Weight + 2);

    /// <inheritdoc/>
    public override double StandardDeviation => (High - Low) * Math.Sqrt(_alpha * _beta / (_alpha + _beta + 1)) / (_alpha + _beta);

    /// <summary>What is wrong with three numbers, in plain words; null when nothing is.</summary>
    /// <param name="low">Lowest possible.</param>
    /// <param name="likely">Most likely.</param>
    /// <param name="high">Highest possible.</param>
    public static string? Problem(double low, double likely, double high) => OrderProblem(low, likely, high);

    /// <inheritdoc/>
    protected override double QuantileOf(double chance) => Low + (High - Low) * Beta.InvCDF(_alpha, _beta, chance);
}
