using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Uncertainty.Distributions;

/// <summary>What many draws of one figure say.</summary>
/// <remarks>
/// E-94. A percentile is read by a straight line between the two nearest values in order, the lowest being P0 and the highest P100:
/// type 7 of Hyndman and Fan (S-95), as spreadsheets have it. A payback that is never reached is entered as
/// <see cref="double.PositiveInfinity"/>: a percentile that touches such a value is infinite too, and so is the mean.
/// </remarks>
public sealed class SampleStatistics
{
    private readonly double[] _sorted;

    private SampleStatistics(double[] sorted, double mean, double standardDeviation) =>
        (_sorted, Mean, StandardDeviation) = (sorted, mean, standardDeviation);

    /// <summary>Draws. [count]</summary>
    public int Count => _sorted.Length;

    /// <summary>Mean.</summary>
    public double Mean { get; }

    /// <summary>Standard deviation, n − 1 in the denominator; infinite where a value is.</summary>
    public double StandardDeviation { get; }

    /// <summary>Standard error of the mean: how far it would move with another seed. s/√n.</summary>
    public double StandardError => StandardDeviation / Math.Sqrt(Count);

    /// <summary>One in ten lies below.</summary>
    public double P10 => Percentile(0.1);

    /// <summary>Median.</summary>
    public double P50 => Percentile(0.5);

    /// <summary>One in ten lies above.</summary>
    public double P90 => Percentile(0.9);

    /// <summary>Statistics of some values.</summary>
    /// <param name="values">Values by number of draw; positive infinity where a figure is never reached. Two at least.</param>
    /// <exception cref="ArgumentException">There are fewer than two, or one is not a number or negative infinity.</exception>
    public static SampleStatistics Of(IReadOnlyList<double> values)
    {
        if (values.Count < 2) throw new ArgumentException("Two values at least.", nameof(values));
        if (values.Any(value => double.IsNaN(value) || double.IsNegativeInfinity(value)))
            throw new ArgumentException("Each value must be a number, or positive infinity for never.", nameof(values));
        double[] sorted = [.. values.Order()];
        if (double.IsPositiveInfinity(sorted[^1])) return new(sorted, double.PositiveInfinity, double.PositiveInfinity);
        var mean = sorted.Average();
        var squares = sorted.Sum(value => (value - mean) * (value - mean));
        return new(sorted, mean, Math.Sqrt(squares / (sorted.Length - 1)));
    }

    /// <summary>The value below which a share lies.</summary>
    /// <param name="share">Share. [unitless, 0–1]</param>
    public double Percentile(double share)
    {
        var place = Require.InRange(share, 0, 1) * (Count - 1);
        var below = Math.Min((int)place, Count - 2);
        var part = place - below;
        return part == 0 || _sorted[below] == _sorted[below + 1] ? _sorted[below] : _sorted[below] + part * (_sorted[below + 1] - _sorted[below]);
    }

    /// <summary>Share of the draws at or below a limit: the chance of a payback within so many years.</summary>
    /// <param name="limit">The limit.</param>
    public Probability AtMost(double limit) => new(UpTo(limit) / (double)Count, Count);

    /// <summary>Share of the draws above a limit: the chance of net savings above zero.</summary>
    /// <param name="limit">The limit.</param>
    public Probability Above(double limit) => new(1 - AtMost(limit).Share, Count);

    /// <summary>Values between which a percentile lies with about 95 % certainty, by the order of the values.</summary>
    /// <param name="share">Share of the percentile. [unitless, 0–1]</param>
    /// <remarks>Places n·p ∓ 1.96 · √(n·p·(1 − p)), rounded outwards.</remarks>
    public (double Low, double High) Between(double share)
    {
        var (middle, spread) = (Count * Require.InRange(share, 0, 1), 1.959964 * Math.Sqrt(Count * share * (1 - share)));
        return (_sorted[Place(Math.Floor(middle - spread))], _sorted[Place(Math.Ceiling(middle + spread))]);
    }

    private int Place(double rank) => (int)Math.Clamp(rank - 1, 0, Count - 1);

    private int UpTo(double limit)
    {
        var (low, high) = (0, Count);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (_sorted[middle] <= limit) low = middle + 1;
            else high = middle;
        }
        return low;
    }
}

/// <summary>A chance seen in a number of draws.</summary>
/// <param name="Share">Share of the draws. [unitless, 0–1]</param>
/// <param name="Draws">Draws. [count]</param>
public sealed record Probability(double Share, int Draws)
{
    /// <summary>Standard error: √(p · (1 − p) / n).</summary>
    public double StandardError => Math.Sqrt(Share * (1 - Share) / Draws);
}
