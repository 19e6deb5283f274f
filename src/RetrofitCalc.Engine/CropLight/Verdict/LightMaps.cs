using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>Maps of the light over a bench for pages and reports.</summary>
public static class LightMaps
{
    /// <summary>Maps of an area, now and after an option.</summary>
    /// <param name="study">A study without problems.</param>
    /// <param name="area">Id of the growing area.</param>
    /// <param name="option">Id of the option; null for the present alone.</param>
    /// <param name="at">Season and stage whose lit step and dimming count; null for all lamps at full light.</param>
    /// <returns>Null where nothing was read on a grid and no layout is known, or the light now cannot be told.</returns>
    /// <exception cref="ArgumentException">No such option, area, season or stage.</exception>
    public static StageMaps? Of(Study study, string area, string? option, (string Season, string Stage)? at = null)
    {
        var place = study.Areas.FirstOrDefault(each => each.Id == area) ?? throw new ArgumentException($"The study has no area {area}.", nameof(area));
        var chosen = option is null ? null : study.Options.FirstOrDefault(each => each.Id == option) ?? throw new ArgumentException($"The study has no option {option}.", nameof(option));
        var context = new StudyContext(study);
        var bench = PresentBench.Of(context, place);
        if (bench.BestFor(StageIn(place, at).LitStep) is not { } read || Points(bench, read) is not { } points)
            return null;
        var measures = chosen?.Measures.ToDictionary(measure => measure.Line, measure => measure.Measure) ?? [];
        var change = new BenchChange(bench, FittedLines.Of(context, measures, out _), chosen);
        var stage = new BenchStage(change, StageIn(place, at), StageIn(change.AreaAfter, at), new(bench, read, bench.Fit is null ? null : points));
        return stage.Now is { } now ? Drawn(change, stage, (points, now)) : null;
    }

    private static StageMaps Drawn(BenchChange change, BenchStage stage, (IReadOnlyList<PlanePoint> Points, double[] Light) now)
    {
        var after = change.Option is not null && stage.IsKnown ? stage.At(0) : null;
        var all = now.Light.Concat(after ?? []).ToList();
        return new()
        {
            Area = change.Bench.Area.Id, Option = change.Option?.Id,
            Now = Map(now.Points, now.Light), After = after is null ? null : Map(now.Points, after),
            Scale = (PhotonFluxDensity.FromMicromolesPerSquareMetre(all.Min()), PhotonFluxDensity.FromMicromolesPerSquareMetre(all.Max())),
            Heights = (PresentBench.HeightOf(change.Lines[0].Now, stage.Read), change.Lines[0].HeightAfter(stage.Read)),
            Fit = change.Bench.Fit, Readings = Met(change.Bench), RestsOn = LightAsk.RestsOn(change.Bench, stage),
        };
    }

    private static LightMap Map(IReadOnlyList<PlanePoint> points, double[] light) =>
        LightMap.Of(points, [.. light.Select(PhotonFluxDensity.FromMicromolesPerSquareMetre)]);

    private static IReadOnlyList<MetReading> Met(PresentBench bench) => bench.Fit is not { } fit ? [] :
        [.. bench.Sets.SelectMany(set => set.Readings.Select(reading => (set.Set, Reading: reading))).Zip(fit.Residuals,
            (read, residual) => new MetReading(read.Set.Id, read.Set.Height, read.Reading, residual))];

    /// <summary>An even grid over the bench where a model fills it, else the readings where they lie on a grid.</summary>
    private static IReadOnlyList<PlanePoint>? Points(PresentBench bench, MeasuredLight read)
    {
        if (bench.Fit is not null && LightMap.GridOver(bench.Light) is { } grid)
            return grid;
        return read.Set.Pattern != ReadingPattern.Outwards && read.Readings.Count == read.Set.Rows.Count * read.Set.Columns.Count
            ? [.. read.Readings.Select(reading => reading.Point)]
            : null;
    }

    private static Stage StageIn(Area area, (string Season, string Stage)? at) => at is not { } named
        ? new() { Name = "", LightsOn = default, LightsOff = default }
        : area.Seasons.FirstOrDefault(season => season.Name == named.Season)?.Stages.FirstOrDefault(stage => stage.Name == named.Stage)
            ?? throw new ArgumentException($"{area.Name} has no stage {named.Stage} in {named.Season}.", nameof(at));
}
