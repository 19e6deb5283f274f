namespace RetrofitCalc.Engine.Uncertainty.Distributions;

/// <summary>A value that an input may have.</summary>
/// <param name="Value">The value.</param>
/// <param name="Weight">How likely, beside the others: 3 against 1 is three times in four. [unitless, 0 or more]</param>
public sealed record WeightedValue(double Value, double Weight);

/// <summary>One of several values, such as a tariff that is either kept or changed.</summary>
public sealed record DiscreteDistribution : InputDistribution
{
    private readonly WeightedValue[] _ascending;
    private readonly double _sum;

    /// <summary>From values and weights.</summary>
    /// <param name="values">Values in any order; weights need not add up to one.</param>
    /// <exception cref="ArgumentException">There are none, a number is missing, a weight is negative, or all are zero.</exception>
    public DiscreteDistribution(IReadOnlyList<WeightedValue> values)
    {
        Refuse(Problem(values));
        _ascending = [.. values.OrderBy(each => each.Value)];
        _sum = _ascending.Sum(each => each.Weight);
    }

    /// <summary>The values, lowest first.</summary>
    public IReadOnlyList<WeightedValue> Values => _ascending;

    /// <inheritdoc/>
    public override double Mean => _ascending.Sum(each => each.Value * each.Weight) / _sum;

    /// <inheritdoc/>
    public override double StandardDeviation =>
        Math.Sqrt(_ascending.Sum(each => (each.Value - Mean) * (each.Value - Mean) * each.Weight) / _sum);

    /// <summary>What is wrong with the values, in plain words; null when nothing is.</summary>
    /// <param name="values">Values and weights.</param>
    public static string? Problem(IReadOnlyList<WeightedValue> values) => values switch
    {
        { Count: 0 } => "There must be at least one value.",
        _ when values.Any(each => !double.IsFinite(each.Value) || !double.IsFinite(each.Weight)) => "Values and weights must be numbers.",
        _ when values.Any(each => each.Weight < 0) => "A weight must be zero or more.",
        _ when values.All(each => each.Weight == 0) => "At least one weight must be above zero.",
        _ => null,
    };

    /// <summary>Same values, same weights.</summary>
    /// <param name="other">The other.</param>
    public bool Equals(DiscreteDistribution? other) => other is not null && _ascending.SequenceEqual(other._ascending);

    /// <inheritdoc/>
    public override int GetHashCode() => _ascending.Aggregate(0, HashCode.Combine);

    /// <summary>The lowest value at or below which the chance lies.</summary>
    protected override double QuantileOf(double chance)
    {
        var (left, last) = (chance * _sum, _ascending[0].Value);
        foreach (var (value, weight) in _ascending)
        {
            if (weight > 0) last = value;
            if (weight > 0 && left <= weight) return value;
            left -= weight;
        }
        return last;
    }
}
