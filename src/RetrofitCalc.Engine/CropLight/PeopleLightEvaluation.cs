using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>Whether people keep enough light where a study asks for it (E-72).</summary>
public static class PeopleLightEvaluation
{
    private static readonly Provenance Stated = new(EvidenceKind.Practice, "Stated in this study");

    /// <summary>Light for each area that says what people do there, in the study's order.</summary>
    /// <param name="context">The study's context.</param>
    /// <param name="now">Counted lines as surveyed.</param>
    /// <param name="after">The same lines, in the same order, after the measures.</param>
    /// <remarks>
    /// Read light is scaled with what the lamps send out; without readings the lumen method gives it. All light after is maintained: just
    /// before lamps are due and luminaires are cleaned. An area whose task nobody recommends a light for, and that states none, is left out.
    /// </remarks>
    public static IReadOnlyList<TaskLight> Of(StudyContext context, IReadOnlyList<FittedLine> now, IReadOnlyList<FittedLine> after) =>
        [.. context.Study.Areas.Select(area => Of(context, area, Pairs(area, now, after))).OfType<TaskLight>()];

    private static List<(FittedLine Now, FittedLine After)> Pairs(Area area, IReadOnlyList<FittedLine> now, IReadOnlyList<FittedLine> after) =>
        [.. now.Zip(after).Where(pair => pair.First.Area.Id == area.Id)];

    private static TaskLight? Of(StudyContext context, Area area, List<(FittedLine Now, FittedLine After)> lines)
    {
        if (area.Light is not { People: { } people } light) return null;
        var recommended = TaskLights.Find(people.Task);
        if ((people.Illuminance ?? recommended?.Mean) is not { } wanted) return null;
        var found = PeopleLightFigures.Of(context, (area, light, people), lines);
        return new()
        {
            Area = area.Id, Task = recommended?.Name ?? "Light for people", Wanted = wanted,
            Source = people.Illuminance is null ? recommended!.Source : Stated,
            Now = found.Now, After = found.After, Basis = found.Basis,
        };
    }
}
