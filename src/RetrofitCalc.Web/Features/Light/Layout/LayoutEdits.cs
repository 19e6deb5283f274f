using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Web.Features.Schedules;
using RetrofitCalc.Web.Shared;
using RetrofitCalc.Web.Shared.Fields;

namespace RetrofitCalc.Web.Features.Light.Layout;

/// <summary>Changes of what hangs over a bench and what surrounds it: pure functions of the study.</summary>
public static class LayoutEdits
{
    /// <summary>Between bench and ceiling of a tier, until somebody measures. [m]; common practice, no source.</summary>
    private const double UsualTier = 0.45;

    public static string Path(int area) => $"Areas[{area}].Light";

    public static string Path(int area, int place) => $"{Path(area)}.Layout[{place}]";

    public static Study Light(Study study, int area, Func<AreaLight, AreaLight> change) =>
        ScheduleEdits.Area(study, area, a => a with { Light = change(a.Light ?? new()) });

    public static Study Place(Study study, int area, int index, Func<LuminairePlace, LuminairePlace> change) =>
        Light(study, area, light => light with { Layout = light.Layout.At(index, change) });

    public static EditState RemovePlace(EditState state, int area, int index) => new(
        Light(state.Study, area, light => light with { Layout = light.Layout.WithoutAt(index) }),
        state.Drafts.AfterDeleting($"{Path(area)}.Layout", index));

    /// <summary>A luminaire more: like the last one, in the middle.</summary>
    public static Study AddPlace(Study study, int area, string line) => Light(study, area, light => light with
    {
        Layout = [.. light.Layout, light.Layout.Count > 0 ? light.Layout[^1] with { Line = line, Centre = new(0, 0), HigherBy = 0 } : new(line, new(0, 0))],
    });

    /// <summary>All luminaires of a line anew, others stay.</summary>
    public static EditState Fill(EditState state, int area, EvenFill fill, (Length Length, Length Width) bench) => new(
        Light(state.Study, area, light => light with
        {
            Layout = [.. light.Layout.Where(place => place.Line != fill.Line), .. fill.Over(bench, light.Layout.FirstOrDefault(place => place.Line == fill.Line))],
        }),
        [.. state.Drafts.Where(draft => !draft.Line.StartsWith($"{Path(area)}.Layout", StringComparison.Ordinal))]);

    /// <summary>An open bench, or surfaces around it with reflectances nobody has looked at yet.</summary>
    public static Study Enclose(Study study, int area, bool enclosed) => Light(study, area, light => light with
    {
        Surroundings = enclosed ? light.Surroundings ?? new(Length.FromMetres(UsualTier), new(0.2, 0, 0.5)) : null,
    });

    public static Study Around(Study study, int area, Func<Surroundings, Surroundings> change) =>
        Light(study, area, light => light.Surroundings is { } around ? light with { Surroundings = change(around) } : light);
}
