using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Uncertainty.Distributions;

/// <summary>What an uncertain input may be, and how likely. In the unit of the input, or as a factor on it.</summary>
/// <remarks>
/// E-91. Each kind names what is wrong with its numbers in <c>Problem</c>, for a page to show beside the field; its constructor
/// throws the same words. A range of no width is allowed and is a certain value.
/// </remarks>
public abstract record InputDistribution
{
    /// <summary>Mean. [unit of the input]</summary>
    public abstract double Mean { get; }

    /// <summary>Standard deviation. [unit of the input]</summary>
    public abstract double StandardDeviation { get; }

    /// <summary>The value that is not exceeded with some chance: inverse of the cumulative distribution.</summary>
    /// <param name="chance">Chance, ends left out. [unitless, above 0 and below 1]</param>
    /// <exception cref="ArgumentOutOfRangeException">The chance lies outside its range.</exception>
    public double Quantile(double chance) => chance is > 0 and < 1
        ? QuantileOf(chance)
        : throw new ArgumentOutOfRangeException(nameof(chance), chance, "Must lie between 0 and 1.");

    /// <summary>The same for a chance that has been checked.</summary>
    /// <param name="chance">Chance. [unitless, above 0 and below 1]</param>
    protected abstract double QuantileOf(double chance);

    /// <summary>Throws the problem, if there is one.</summary>
    /// <param name="problem">What is wrong; null when nothing is.</param>
    protected static void Refuse(string? problem)
    {
        if (problem is not null) throw new ArgumentException(problem);
    }

    /// <summary>What is wrong with three ends of a range; null when nothing is.</summary>
    /// <param name="low">Lowest.</param>
    /// <param name="likely">Most likely.</param>
    /// <param name="high">Highest.</param>
    protected static string? OrderProblem(double low, double likely, double high) => (low, likely, high) switch
    {
        _ when !double.IsFinite(low) || !double.IsFinite(likely) || !double.IsFinite(high) => "Low, likely and high must be numbers.",
        _ when low > high => $"Low ({low}) lies above high ({high}).",
        _ when likely < low || likely > high => $"Likely ({likely}) lies outside {low} to {high}.",
        _ => null,
    };
}
