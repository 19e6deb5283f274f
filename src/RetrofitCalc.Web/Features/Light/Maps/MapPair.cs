using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Results;
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

    /// <summary>The readings nearest in height, whose places carry the values; null where none lie on a grid.</summary>
    public ReadingSet? Read { get; init; }

    /// <summary>They were read as the stage is lit now, at its height: then what was read stands on the map of now.</summary>
    public bool ReadAsLit { get; init; }

    /// <summary>Tints from the darkest to the brightest place of both maps, and the least light wanted.</summary>
    public LightScale Scale(double? wanted)
    {
        var all = Now.Light.Cast<double>().Concat(After?.Light.Cast<double>() ?? []).ToList();
        return new(EvenSteps.Over(all.Min(), all.Max()), wanted);
    }

    /// <summary>Of a stage as the model has it, else the readings themselves; null where neither is known.</summary>
    public static MapPair? Of(Study study, string area, string? option, StageLight? stage)
    {
        var place = study.Areas.First(a => a.Id == area);
        if (place.Light is not { } light) return null;
        if (!place.GrowsCrop || LightMaps.Of(study, area, option, stage is null ? null : (stage.Season, stage.Stage)) is not { } maps) return OfReadings(light);
        var read = light.Readings.Where(set => set.Pattern != ReadingPattern.Outwards).MinBy(set => Math.Abs(set.Height.Metres - maps.Heights.Now.Metres));
        return new(maps.Now, maps.After)
        {
            Fit = maps.Fit,
            RestsOn = maps.RestsOn,
            Read = read,
            ReadAsLit = read is not null && Math.Abs(read.Height.Metres - maps.Heights.Now.Metres) < SameHeight && IsLitSo(place, stage, read),
        };
    }

    private const double SameHeight = 0.005; // m

    private static bool IsLitSo(Area area, StageLight? stage, ReadingSet read) => stage is null ? read.LitStep is null
        : area.Seasons.First(season => season.Name == stage.Season).Stages.First(s => s.Name == stage.Stage) is { Dimming: 1 } lit && lit.LitStep == read.LitStep;

    /// <summary>What was read, in photons, row by row; null unless it stands for now.</summary>
    public IReadOnlyList<IReadOnlyList<double?>>? ReadValues(AreaLight light)
    {
        if (!ReadAsLit || Read is not { } set || MeasuredLight.Of(set, light) is not { } measured) return null;
        var known = measured.Readings.ToDictionary(reading => reading.Index, reading => reading.Light.MicromolesPerSquareMetre);
        return [.. Enumerable.Range(0, set.Rows.Count).Select(row => (IReadOnlyList<double?>)[.. Enumerable.Range(0, set.Columns.Count)
            .Select(column => known.TryGetValue(row * set.Columns.Count + column, out var light) ? light : (double?)null)])];
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
            ReadAsLit = true,
            RestsOn = FormattableString.Invariant($"{read.Readings.Count} readings"),
        };
    }
}
