using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>What a set of readings or predicted points says of an area. Weights: <see cref="AreaWeights"/>.</summary>
/// <remarks>Uniformity as EN 12464-1 has it (minimum to mean); the coefficient of variation is that of the whole population (E-55).</remarks>
public sealed class LightStatistics
{
    private readonly (double Light, double Weight)[] _readings;
    private readonly double _whole;

    private LightStatistics((double, double)[] readings)
    {
        _readings = readings;
        _whole = _readings.Sum(reading => reading.Weight);
        Mean = PhotonFluxDensity.FromMicromolesPerSquareMetre(_readings.Sum(reading => reading.Light * reading.Weight) / _whole);
        Minimum = PhotonFluxDensity.FromMicromolesPerSquareMetre(_readings.Min(reading => reading.Light));
        Maximum = PhotonFluxDensity.FromMicromolesPerSquareMetre(_readings.Max(reading => reading.Light));
    }

    /// <summary>Takes readings with the area each stands for.</summary>
    /// <param name="readings">Light at each place. [µmol m⁻² s⁻¹]</param>
    /// <param name="weights">Area of each, in the same order; only ratios count. [0 or more]</param>
    /// <exception cref="ArgumentException">No readings, another number of weights, or no weight at all.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A negative weight.</exception>
    public static LightStatistics Of(IReadOnlyList<PhotonFluxDensity> readings, IReadOnlyList<double> weights)
    {
        if (readings.Count == 0 || readings.Count != weights.Count)
            throw new ArgumentException($"Must be as many as the {readings.Count} readings, and at least one: {weights.Count}.", nameof(weights));
        if (!(weights.Sum(weight => Require.NotNegative(weight)) > 0)) throw new ArgumentException("Must not all be zero.", nameof(weights));
        return new([.. readings.Zip(weights, (reading, weight) => (reading.MicromolesPerSquareMetre, weight))]);
    }

    /// <summary>Mean over the area. [µmol m⁻² s⁻¹]</summary>
    public PhotonFluxDensity Mean { get; }

    /// <summary>Lowest reading. [µmol m⁻² s⁻¹]</summary>
    public PhotonFluxDensity Minimum { get; }

    /// <summary>Highest reading. [µmol m⁻² s⁻¹]</summary>
    public PhotonFluxDensity Maximum { get; }

    /// <summary>Number of readings. [count]</summary>
    public int Count => _readings.Length;

    /// <summary>Uniformity; null in the dark. [unitless, 0–1]</summary>
    public double? MinimumToMean => Ratio(Minimum.MicromolesPerSquareMetre, Mean);

    /// <summary>Lowest by highest; null in the dark. [unitless, 0–1]</summary>
    public double? MinimumToMaximum => Ratio(Minimum.MicromolesPerSquareMetre, Maximum);

    /// <summary>Standard deviation of the population over the mean, both weighted by area; null in the dark. [unitless]</summary>
    public double? CoefficientOfVariation
    {
        get
        {
            var mean = Mean.MicromolesPerSquareMetre;
            return Ratio(Math.Sqrt(_readings.Sum(reading => reading.Weight * (reading.Light - mean) * (reading.Light - mean)) / _whole), Mean);
        }
    }

    /// <summary>Share of the area that has a light or more. [unitless, 0–1]</summary>
    /// <param name="threshold">The light. [µmol m⁻² s⁻¹]</param>
    public double ShareAtOrAbove(PhotonFluxDensity threshold) =>
        _readings.Where(reading => reading.Light >= threshold.MicromolesPerSquareMetre).Sum(reading => reading.Weight) / _whole;

    /// <summary>Daily light of the mean. [mol m⁻² d⁻¹]</summary>
    /// <param name="photoperiod">Hours lit each day. [h, 0–24]</param>
    /// <exception cref="ArgumentOutOfRangeException">More than 24 h.</exception>
    public DailyLight Daily(OperatingTime photoperiod) => DailyLight.Of(Mean, photoperiod);

    private static double? Ratio(double part, PhotonFluxDensity whole) =>
        whole.MicromolesPerSquareMetre > 0 ? part / whole.MicromolesPerSquareMetre : null;
}
