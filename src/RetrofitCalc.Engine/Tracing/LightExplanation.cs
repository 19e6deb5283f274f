using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Tracing;

/// <summary>Answers "where does this light come from?": readings to mean, mean to the light of a day, and the change, by the functions that judge the stage.</summary>
public static class LightExplanation
{
    private const string Micromoles = "µmol/m²·s", Moles = "mol/m²";

    /// <summary>Steps that lead to the change of light in a stage, or to the light of now without an option; none where nothing counts that was read.</summary>
    /// <param name="study">A study without problems.</param>
    /// <param name="area">Id of the growing area.</param>
    /// <param name="at">Season and stage.</param>
    /// <param name="option">Id of the option; null for the present alone.</param>
    /// <exception cref="ArgumentException">No such area, season, stage or option.</exception>
    public static IReadOnlyList<TraceStep> Of(Study study, string area, (string Season, string Stage) at, string? option)
    {
        var place = study.Areas.FirstOrDefault(each => each.Id == area) ?? throw new ArgumentException($"The study has no area {area}.", nameof(area));
        var chosen = option is null ? null : study.Options.FirstOrDefault(each => each.Id == option) ?? throw new ArgumentException($"The study has no option {option}.", nameof(option));
        var context = new StudyContext(study);
        var bench = PresentBench.Of(context, place);
        var measures = chosen?.Measures.ToDictionary(measure => measure.Line, measure => measure.Measure) ?? [];
        var change = new BenchChange(bench, FittedLines.Of(context, measures, out _), chosen);
        var trace = new Trace();
        foreach (var read in bench.Sets) Mean(read, trace);
        if (bench.Fit is { } fit) Fit(fit, trace);
        Stage(StageJudge.Of(change, at.Season, (StageOf(place, at), StageOf(change.AreaAfter, at))).Light, chosen is not null, trace);
        return trace.Steps;
    }

    private static Stage StageOf(Area area, (string Season, string Stage) at) =>
        area.Seasons.FirstOrDefault(season => season.Name == at.Season)?.Stages.FirstOrDefault(stage => stage.Name == at.Stage)
            ?? throw new ArgumentException($"{area.Name} has no stage {at.Stage} in {at.Season}.", nameof(at));

    private static void Mean(MeasuredLight read, Trace trace) => trace.Add(
        $"Mean of {read.Readings.Count} readings, lamps {LightAsk.Plain(read.Set.Height)} over the sensor", $"sum of light times weight over sum of weights, {read.Weighting} (E-55, E-60)",
        [new("readings", read.Readings.Count, ""), new("sum of weights", read.Weights.Sum(), "")],
        new("mean", read.Statistics.Mean.MicromolesPerSquareMetre, Micromoles), read.Set.Note);

    private static void Fit(FittedLight fit, Trace trace) => trace.Add(
        "Model of the lamps, fitted to the readings", "least squares of light facing down, all around, and even light (E-62)",
        [new("share seen facing down", fit.Strip, ""), new("share seen all around", fit.Tube, ""), new("share by the file", fit.File, "")],
        new("misses the readings by", fit.RootMeanSquare, ""), fit.Determined);

    private static void Stage(StageLight stage, bool changes, Trace trace)
    {
        Daily("now", stage.Now, trace);
        if (!changes) return;
        Daily("after the change, when new", stage.After, trace);
        Daily("at the end of the interval", stage.AtEnd, trace);
        if (stage is not { Now: { } now, After: { } after, Change: { } change }) return;
        if (stage.UncertainBy.Count > 0)
            trace.Add("How far the change may be off", "after / now times the root of the sum of squares of the rest, 19 times in 20 (E-79)",
                [new("after / now", 1 + change, ""), .. stage.UncertainBy.Select(part => new TraceValue(part.Name, part.Share, ""))], new("±", stage.ChangeUncertainty ?? 0, ""));
        trace.Add("Change of daily light", "after / now − 1 (E-80)",
            [new("after", after.Daily.MolesPerSquareMetre, Moles), new("now", now.Daily.MolesPerSquareMetre, Moles)], new("change", change, ""));
    }

    /// <summary>Lit hours are those the light of the day was reckoned with: an option may light a stage longer than now.</summary>
    private static void Daily(string when, LightFigures? light, Trace trace)
    {
        if (light is null || light.Mean == Quantities.PhotonFluxDensity.Zero) return;
        var hours = light.Daily.MolesPerSquareMetre / DailyLight.Of(light.Mean, Quantities.OperatingTime.FromHours(1)).MolesPerSquareMetre;
        trace.Add($"Light of a day {when}", "PPFD · h · 0.0036 (E-53)", [new("PPFD", light.Mean.MicromolesPerSquareMetre, Micromoles), new("h", hours, "h")], new("DLI", light.Daily.MolesPerSquareMetre, Moles));
    }
}
