using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Luminaires;

/// <summary>What is fitted on each counted line, as surveyed or after its measure.</summary>
public static class FittedLines
{
    /// <summary>Resolves each line whose set-up and count are known.</summary>
    /// <param name="context">The study's context.</param>
    /// <param name="measures">What is done, by id of the survey line; lines not named are kept.</param>
    /// <param name="refused">Measures that do not fit; their lines are kept as they are.</param>
    public static IReadOnlyList<FittedLine> Of(
        StudyContext context, IReadOnlyDictionary<string, Measure> measures, out IReadOnlyList<RefusedMeasure> refused) =>
        throw new NotImplementedException();
}
