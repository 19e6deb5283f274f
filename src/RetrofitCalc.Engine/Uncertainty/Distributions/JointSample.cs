using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Uncertainty.Distributions;

/// <summary>Inputs that move together, such as all tariffs or all lives.</summary>
/// <param name="Number">A number of its own.</param>
/// <param name="Correlation">Correlation of any two of them, of their normal scores: 0 none, 1 all at once. [unitless, 0–1]</param>
/// <remarks>The correlation of their ranks is a little less: 6/π · asin(ρ/2) (S-96).</remarks>
public sealed record InputGroup(int Number, double Correlation);

/// <summary>An uncertain input.</summary>
/// <param name="Number">A number of its own that it keeps for good: its random numbers follow from it.</param>
/// <param name="Distribution">What it may be.</param>
/// <param name="Group">Inputs it moves with; null for none.</param>
public sealed record SampledInput(int Number, InputDistribution Distribution, InputGroup? Group = null);

/// <summary>Draws of several inputs at once, groups moving together.</summary>
/// <remarks>
/// E-93: a Gaussian copula of one factor for each group, z = √ρ · g + √(1 − ρ) · e, value = quantile of Φ(z). Each input keeps its own
/// distribution whatever the correlation. To run a study: one draw for each i from 0, values turned into a <see cref="Perturbation"/>
/// (a factor for each key of its), the option's model under it, and <see cref="SampleStatistics"/> of what comes out, results
/// stored by i so that neither order nor number of cores matters.
/// </remarks>
public sealed class JointSample
{
    private const double Nearest = 1.0 / (1UL << 53);

    private readonly SampledInput[] _inputs;
    private readonly RandomStream _stream;

    /// <summary>Draws of some inputs.</summary>
    /// <param name="inputs">The inputs, in the order of the values.</param>
    /// <param name="seed">Seed of the study.</param>
    /// <exception cref="ArgumentException">Two inputs have one number, or two groups of one number differ.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A correlation lies outside 0 to 1.</exception>
    public JointSample(IReadOnlyList<SampledInput> inputs, int seed)
    {
        if (inputs.DistinctBy(input => input.Number).Count() < inputs.Count)
            throw new ArgumentException("Two inputs have the same number.", nameof(inputs));
        var groups = inputs.Select(input => input.Group).OfType<InputGroup>().Distinct().ToList();
        if (groups.DistinctBy(group => group.Number).Count() < groups.Count)
            throw new ArgumentException("Two groups of the same number differ in their correlation.", nameof(inputs));
        foreach (var group in groups) Require.InRange(group.Correlation, 0, 1, nameof(inputs));
        (_inputs, _stream) = ([.. inputs], new RandomStream(seed));
    }

    /// <summary>One draw.</summary>
    /// <param name="draw">Which. [count from 0]</param>
    /// <returns>A value for each input, in their order.</returns>
    public double[] Draw(long draw) => Array.ConvertAll(_inputs, input => input.Distribution.Quantile(Chance(input, draw)));

    private double Chance(SampledInput input, long draw)
    {
        if (input.Group is not { Correlation: > 0 } group) return _stream.At(draw, input.Number);
        var common = _stream.OfGroup(draw, group.Number);
        if (group.Correlation == 1) return common;
        var own = StandardNormal.Quantile(_stream.At(draw, input.Number));
        var z = Math.Sqrt(group.Correlation) * StandardNormal.Quantile(common) + Math.Sqrt(1 - group.Correlation) * own;
        return Math.Clamp(StandardNormal.Cumulative(z), Nearest, 1 - Nearest);
    }
}
