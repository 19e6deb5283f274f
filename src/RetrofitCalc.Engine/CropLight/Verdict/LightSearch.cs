using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>Which height, lit step and product keep a target with the least watts (E-83): every combination is tried and judged as an option is.</summary>
public static class LightSearch
{
    /// <summary>Most heights tried: over a high hall they lie further apart. [count]</summary>
    public const int MostHeights = 60;

    /// <summary>Least distance of the heights tried. [m]</summary>
    public const double HeightStep = 0.025;

    private const double Rounding = 1e-6;

    /// <summary>Tries all heights within reach of the readings, all steps and all products that fit.</summary>
    /// <param name="study">A study without problems.</param>
    /// <param name="option">Id of the option.</param>
    /// <param name="area">Id of the growing area.</param>
    /// <param name="season">Name of the season.</param>
    /// <param name="stage">Name of the stage.</param>
    /// <param name="candidates">Tubes and luminaires to try besides those of the study.</param>
    /// <param name="stop">Ends the search after the way being tried.</param>
    /// <returns>Without a layout and readings, or with more readings and lamps than can be tried: nothing tried, and what to ask for.</returns>
    /// <exception cref="ArgumentException">No such option, area, season or stage.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static LightSearchResult Of(Study study, string option, string area, string season, string stage, CatalogueExtract candidates, CancellationToken stop = default)
    {
        (string Season, string Stage) at = (season, stage);
        var known = study.Catalogue;
        var whole = study with
        {
            Catalogue = known with
            {
                Tubes = [.. known.Tubes.Concat(candidates.Tubes).DistinctBy(tube => tube.Id)],
                Luminaires = [.. known.Luminaires.Concat(candidates.Luminaires).DistinctBy(luminaire => luminaire.Id)],
            },
        };
        var context = new StudyContext(whole);
        var place = Find(whole, option, area, at);
        var bench = PresentBench.Of(context, place.Area);
        if (bench.Work > FixSearch.MostWork)
            return new([], null, []) { Ask = FormattableString.Invariant($"Over {place.Area.Name} readings times lamps are {bench.Work:N0}, and at most {FixSearch.MostWork:N0} can be tried at every height: lay out one of several like benches, or keep a coarser grid of readings.") };
        var change = new BenchChange(bench, FittedLines.Of(context, place.Option.Measures.ToDictionary(measure => measure.Line, measure => measure.Measure), out _), place.Option);
        var lit = StageJudge.Of(change, season, (place.Stage, StageIn(change.AreaAfter, at))).Light;
        if (bench.Fit is null || lit.After is null)
            return new([], null, []) { Ask = lit.Ask ?? $"Lay out the luminaires over the bench in {place.Area.Name}: without that nobody can tell the light at another height." };
        var tried = new SearchSpace(change, at.Season, lit).Ways(stop).ToList();
        return new(tried, LeastOf(tried), CurveOf(tried));
    }

    /// <summary>The study with the option changed to a way that was tried.</summary>
    /// <param name="study">The study; the product must be in its catalogue.</param>
    /// <param name="option">Id of the option.</param>
    /// <param name="area">Id of the area.</param>
    /// <param name="at">Season and stage whose lit step it sets.</param>
    /// <param name="way">The way.</param>
    public static Study Apply(Study study, string option, string area, (string Season, string Stage) at, LightTry way)
    {
        var (product, step) = SearchSpace.Fixes(way, new(area, at.Season, at.Stage));
        return LightFixes.Apply(LightFixes.Apply(study, option, area, product), option, area, step);
    }

    /// <summary>Heights half beyond those read, a whole number of least distances apart. [m]</summary>
    /// <param name="read">Lowest and highest that were read.</param>
    public static IReadOnlyList<double> HeightsWithin((Length Low, Length High) read)
    {
        var (from, to) = (read.Low.Metres / 2, read.High.Metres * 1.5);
        var apart = HeightStep * Math.Max(1, Math.Ceiling((to - from) / HeightStep / (MostHeights - 1) - Rounding));
        var (first, last) = ((int)Math.Ceiling(from / apart - Rounding), (int)Math.Floor(to / apart + Rounding));
        return [.. Enumerable.Range(first, Math.Max(0, last - first + 1)).Select(step => step * apart)];
    }

    /// <summary>Ways none of the others beats in both mean light and evenness, the brightest first.</summary>
    /// <param name="tried">All ways.</param>
    public static IReadOnlyList<LightTry> CurveOf(IReadOnlyList<LightTry> tried)
    {
        var curve = new List<LightTry>();
        var evenest = double.NegativeInfinity;
        foreach (var way in tried.OrderByDescending(way => way.Light.Mean).ThenByDescending(Evenness).ThenBy(way => way.Power.Watts))
            if (Evenness(way) > evenest)
            {
                curve.Add(way);
                evenest = Evenness(way);
            }
        return curve;
    }

    private static LightTry? LeastOf(IEnumerable<LightTry> tried) =>
        tried.Where(way => way is { Meets: true, TooMuch: false }).OrderBy(way => way.Power.Watts).ThenByDescending(Evenness).FirstOrDefault();

    private static double Evenness(LightTry way) => way.Light.MinimumToMean ?? 0;

    private static (RetrofitOption Option, Area Area, Stage Stage) Find(Study study, string option, string area, (string Season, string Stage) at)
    {
        var found = study.Areas.FirstOrDefault(each => each.Id == area && each.GrowsCrop) ?? throw new ArgumentException($"The study has no growing area {area}.", nameof(area));
        return (study.Options.FirstOrDefault(each => each.Id == option) ?? throw new ArgumentException($"The study has no option {option}.", nameof(option)),
            found, StageIn(found, at));
    }

    private static Stage StageIn(Area area, (string Season, string Stage) at) =>
        area.Seasons.FirstOrDefault(season => season.Name == at.Season)?.Stages.FirstOrDefault(stage => stage.Name == at.Stage)
            ?? throw new ArgumentException($"{area.Name} has no stage {at.Stage} in {at.Season}.", nameof(at));
}
