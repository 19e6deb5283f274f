using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>A reading that counts.</summary>
/// <param name="Index">Its position in the set. [0-based, row · columns + column]</param>
/// <param name="Point">Where it was taken, from the middle of the bench.</param>
/// <param name="Light">What was read, in photons. [µmol m⁻² s⁻¹]</param>
public readonly record struct LightReading(int Index, PlanePoint Point, PhotonFluxDensity Light);

/// <summary>Something about readings that someone should look at again.</summary>
/// <param name="Index">Position of the reading [0-based, row · columns + column]; −1 for the whole set.</param>
/// <param name="Text">In plain words.</param>
public readonly record struct ReadingDoubt(int Index, string Text);

/// <summary>What a set of readings says: light at places, each with the area it stands for (E-60).</summary>
public sealed record MeasuredLight
{
    /// <summary>The set.</summary>
    public required ReadingSet Set { get; init; }

    /// <summary>Length and width of the bench; null when either is not known.</summary>
    public (Length Length, Length Width)? Bench { get; init; }

    /// <summary>Readings in the set's order, blanks and impossible ones left out; of a quadrant those of the one quarter.</summary>
    public required IReadOnlyList<LightReading> Readings { get; init; }

    /// <summary>Area each stands for, in the same order; only ratios count. [0 or more]</summary>
    public required IReadOnlyList<double> Weights { get; init; }

    /// <summary>How the weights were found, in plain words.</summary>
    public required string Weighting { get; init; }

    /// <summary>Mean, extremes and spread over the area the readings cover.</summary>
    public required LightStatistics Statistics { get; init; }

    /// <summary>How far all readings may be off together, either way: meter, and conversion of lux. [unitless]</summary>
    public required double Uncertainty { get; init; }

    /// <summary>Positions of readings that do not fit those around them and that nobody has confirmed: they count in the mean, not for a model. [0-based, row · columns + column]</summary>
    public IReadOnlyList<int> OutOfLine { get; init; } = [];

    /// <summary>What should be looked at again; confirmed readings are not questioned.</summary>
    public required IReadOnlyList<ReadingDoubt> Doubts { get; init; }

    /// <summary>Takes the readings of a set; null when nothing is usable: no values, a table whose rows do not fit its places, or lux that nobody can convert.</summary>
    /// <param name="set">The readings.</param>
    /// <param name="area">The bench they were taken on.</param>
    public static MeasuredLight? Of(ReadingSet set, AreaLight area)
    {
        if (MicromolesPerUnit(set) is not { } factor || !ReadingPlaces.Fit(set)) return null;
        var readings = ReadingPlaces.Of(set).Where(place => place.Value >= 0)
            .Select(place => new LightReading(place.Index, place.Point, PhotonFluxDensity.FromMicromolesPerSquareMetre(place.Value * factor))).ToList();
        if (readings.Count == 0) return null;
        var (weights, weighting) = ReadingWeights.Of(set, readings);
        if (!(weights.Sum() > 0)) return null;
        var measured = new MeasuredLight
        {
            Set = set,
            Bench = area is { BenchLength: { Metres: > 0 } length, BenchWidth: { Metres: > 0 } width } ? (length, width) : null,
            Readings = readings, Weights = weights, Weighting = weighting,
            Statistics = LightStatistics.Of([.. readings.Select(reading => reading.Light)], weights),
            Uncertainty = double.Hypot(set.MeterUncertainty, set.Unit == LightUnit.Micromoles ? 0 : set.Conversion!.Uncertainty),
            Doubts = [],
        };
        IReadOnlyList<ReadingDoubt> strangers = [.. NeighbourTest.Of(measured)];
        return measured with { Doubts = ReadingDoubts.Of(measured, strangers), OutOfLine = [.. strangers.Select(doubt => doubt.Index)] };
    }

    /// <summary>Photons of one unit of the meter; null when nobody has said.</summary>
    private static double? MicromolesPerUnit(ReadingSet set) => set.Unit switch
    {
        LightUnit.Micromoles => 1,
        LightUnit.Lux => 1 / set.Conversion?.LuxPerMicromole,
        _ => UnitConversions.LuxPerFootCandle / set.Conversion?.LuxPerMicromole,
    };
}
