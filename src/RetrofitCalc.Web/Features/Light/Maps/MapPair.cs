using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Reports;

namespace RetrofitCalc.Web.Features.Light.Maps;

/// <summary>Light over a bench now and, where it is known, after the change; and what both rest on.</summary>
/// <param name="Now">Light now.</param>
/// <param name="After">Light after the change when new; null where nothing is asked for, or nobody can say.</param>
public sealed record MapPair(LightMap Now, LightMap? After)
{
    /// <summary>The model the maps come from; null where the map is the readings themselves.</summary>
    public FittedLight? Fit { get; init; }

    public string RestsOn { get; init; } = "";

    /// <summary>The readings of the lowest height, for values on the map; null where none lie on a grid.</summary>
    public ReadingSet? Read { get; init; }

    /// <summary>Tints from the darkest to the brightest place of both maps, and the least light wanted.</summary>
    public LightScale Scale(double? wanted)
    {
        var all = Now.Light.Cast<double>().Concat(After?.Light.Cast<double>() ?? []).ToList();
        return new(EvenSteps.Over(all.Min(), all.Max()), wanted);
    }

    /// <summary>The readings themselves, where every place of a grid was read.</summary>
    public static MapPair? OfReadings(AreaLight light)
    {
        var read = light.Readings.Where(set => set.Pattern != ReadingPattern.Outwards)
            .Select(set => MeasuredLight.Of(set, light)).OfType<MeasuredLight>()
            .FirstOrDefault(measured => measured.Readings.Count == measured.Set.Rows.Count * measured.Set.Columns.Count);
        return read is null ? null : new(LightMap.Of([.. read.Readings.Select(r => r.Point)], [.. read.Readings.Select(r => r.Light)]), null)
        {
            Read = read.Set,
            RestsOn = FormattableString.Invariant($"{read.Readings.Count} readings"),
        };
    }
}
