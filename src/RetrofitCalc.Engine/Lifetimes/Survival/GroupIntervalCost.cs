using MathNet.Numerics;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Lifetimes.Survival;

/// <summary>What changing one part costs: the part, the work on it, and recycling the old one.</summary>
/// <param name="Spot">When it alone is changed.</param>
/// <param name="Group">When it is changed with the rest.</param>
public sealed record ChangePrice(Money Spot, Money Group);

/// <summary>The interval of group changes at which a part costs least for its hours.</summary>
/// <param name="Interval">Hours between group changes; null when changing each part as it fails is cheapest.</param>
/// <param name="Cost">Cost of 1,000 hours of one part at that interval.</param>
/// <param name="SpotOnly">The same without group changes.</param>
public sealed record BestInterval(OperatingTime? Interval, Money Cost, Money SpotOnly);

/// <summary>One point of the curve of cost over the interval.</summary>
/// <param name="Interval">Hours between group changes.</param>
/// <param name="Cost">Cost of 1,000 hours of one part.</param>
public sealed record IntervalCost(OperatingTime Interval, Money Cost);

/// <summary>Cost of a part for its hours, over the interval at which all are changed together.</summary>
/// <remarks>
/// E-89: c(T) = (c_group + c_spot · M(T)) / T in the long run; c_spot / μ where each is changed as it fails. Light lost with age, the
/// grower's dark hours and discounting are not in it. S-92.
/// </remarks>
public sealed class GroupIntervalCost
{
    /// <summary>Longest interval looked at: later waves of failures are nearly level. [medians of life]</summary>
    private const double Longest = 4;

    private const int Points = 160;

    private readonly WeibullLife _life;
    private readonly ChangePrice _price;
    private readonly RenewalFunction _renewals;

    /// <summary>The curve of a part.</summary>
    /// <param name="life">Life of the part.</param>
    /// <param name="price">What changing one costs; both above zero.</param>
    /// <param name="renewals">Renewal function of its shape that reaches four medians; null makes one.</param>
    /// <exception cref="ArgumentOutOfRangeException">A price is zero or less.</exception>
    public GroupIntervalCost(WeibullLife life, ChangePrice price, RenewalFunction? renewals = null)
    {
        Require.InRange(price.Spot.Units, double.Epsilon, double.MaxValue, nameof(price));
        Require.InRange(price.Group.Units, double.Epsilon, double.MaxValue, nameof(price));
        (_life, _price, _renewals) = (life, price, renewals ?? RenewalFunction.Of(life.Shape, Longest, 500));
    }

    /// <summary>Cost of 1,000 hours of one part when each is changed as it fails.</summary>
    public Money SpotOnly => _price.Spot * 1000 / _life.Mean.Hours;

    /// <summary>Cost of 1,000 hours of one part.</summary>
    /// <param name="interval">Hours between group changes; above zero, at most four medians of life.</param>
    public Money At(OperatingTime interval) => (_price.Group + _price.Spot * Failures(interval.Hours)) * 1000 / interval.Hours;

    /// <summary>The curve, for a chart.</summary>
    /// <param name="from">Shortest interval; above zero.</param>
    /// <param name="to">Longest; at most four medians of life.</param>
    /// <param name="points">Points, evenly apart. [count, 2 or more]</param>
    public IReadOnlyList<IntervalCost> Curve(OperatingTime from, OperatingTime to, int points)
    {
        Require.InRange(points, 2, int.MaxValue);
        return [.. Generate.LinearSpaced(points, from.Hours, to.Hours).Select(OperatingTime.FromHours).Select(t => new IntervalCost(t, At(t)))];
    }

    /// <summary>The cheapest interval.</summary>
    public BestInterval Best()
    {
        var hours = Lowest(interval => At(OperatingTime.FromHours(interval)).Units);
        var cost = At(OperatingTime.FromHours(hours));
        return cost < SpotOnly ? new(OperatingTime.FromHours(hours), cost, SpotOnly) : new(null, SpotOnly, SpotOnly);
    }

    /// <summary>Most that changing one part with the rest may cost before it is better to change each as it fails.</summary>
    /// <returns>That price; zero where new parts fail no later than old ones.</returns>
    /// <remarks>c_group = c_spot · max over T of (T/μ − M(T)).</remarks>
    public Money DearestGroupChange()
    {
        double Saved(double interval) => interval / _life.Mean.Hours - Failures(interval);
        return _price.Spot * Math.Max(0, Saved(Lowest(interval => -Saved(interval))));
    }

    /// <summary>The curve may have several valleys, one for each wave of failures: the lowest point of many, then its valley's floor.</summary>
    private double Lowest(Func<double, double> curve)
    {
        var step = _life.Median.Hours * Longest / Points;
        var lowest = Enumerable.Range(1, Points).MinBy(i => curve(i * step));
        var (left, right) = (Math.Max(0.01, lowest - 1) * step, (lowest + 1) * step);
        var isValley = lowest < Points && curve(left) > curve(lowest * step);
        return isValley ? FindMinimum.OfScalarFunctionConstrained(curve, left, right, 1e-6) : lowest * step;
    }

    private double Failures(double interval) => _renewals.Failures(_life, AgeMix.New, OperatingTime.FromHours(interval)).Value;
}
