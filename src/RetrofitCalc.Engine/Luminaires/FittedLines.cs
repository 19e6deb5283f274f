using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Luminaires;

/// <summary>What is fitted on each counted line, as surveyed or after its measure.</summary>
public static class FittedLines
{
    /// <summary>Resolves each line that can be counted: set-up, count and input power known.</summary>
    /// <param name="context">The study's context.</param>
    /// <param name="measures">What is done, by id of the survey line; lines not named are kept.</param>
    /// <param name="refused">Measures that do not fit; their lines are kept as they are.</param>
    public static IReadOnlyList<FittedLine> Of(
        StudyContext context, IReadOnlyDictionary<string, Measure> measures, out IReadOnlyList<RefusedMeasure> refused)
    {
        var refusals = new List<RefusedMeasure>();
        var fitted = new FittedLine[context.Lines.Count];
        for (var i = 0; i < fitted.Length; i++)
            fitted[i] = After(context, context.Lines[i], measures.GetValueOrDefault(context.Lines[i].Fitted.Line.Id), refusals);
        refused = refusals;
        return fitted;
    }

    private static FittedLine After(StudyContext context, CountedLine line, Measure? measure, List<RefusedMeasure> refusals) => measure switch
    {
        null or KeepAsIs => line.Fitted,
        RenewLikeForLike => line.Fitted with { Fitting = line.Model.Renewed },
        DirectWire wire => WithTubes(context, line, wire, refusals),
        ReplaceLuminaire replace => WithLuminaire(context, line, replace, refusals),
        _ => throw new ArgumentOutOfRangeException(nameof(measure), measure.GetType().Name, "Unknown kind of measure."),
    };

    private static FittedLine WithTubes(StudyContext context, CountedLine line, DirectWire wire, List<RefusedMeasure> refusals)
    {
        var tubes = wire.TubesPerLuminaire ?? line.Model.Fitting.SetUp.LampCount;
        var refusal = context.Tubes.TryGetValue(wire.Tube, out var tube)
            ? MeasureFit.Refusal(line.Fitted.Line, line.Model.Fitting, tube, tubes)
            : NotInCatalogue("tube", wire.Tube);
        if (refusal is null)
            return line.Fitted with { Fitting = new TubeFitting(tube!, tubes) };
        refusals.Add(new(line.Fitted.Line.Id, refusal));
        return line.Fitted;
    }

    private static FittedLine WithLuminaire(StudyContext context, CountedLine line, ReplaceLuminaire replace, List<RefusedMeasure> refusals)
    {
        var refusal = context.Luminaires.TryGetValue(replace.Luminaire, out var luminaire)
            ? MeasureFit.VoltageRefusal(line.Fitted.Line, luminaire)
            : NotInCatalogue("luminaire", replace.Luminaire);
        if (refusal is null)
            return line.Fitted with { Fitting = new LuminaireFitting(luminaire!), Luminaires = line.Fitted.Luminaires * replace.PerExisting };
        refusals.Add(new(line.Fitted.Line.Id, refusal));
        return line.Fitted;
    }

    private static string NotInCatalogue(string kind, string id) =>
        $"The catalogue has no {kind} \"{id}\". Choose one from the catalogue.";
}
