using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Web.Features.Light.Layout;

namespace RetrofitCalc.Web.Features.Light.People;

/// <summary>Changes of what people do in an area: pure functions of the study.</summary>
public static class PeopleEdits
{
    /// <summary>Stands for an own value; <see cref="NotAsked"/> for no question at all.</summary>
    public const string Own = "own", NotAsked = "";

    /// <summary>Illuminance an own value starts from. [lx]</summary>
    private const double FirstOwnLux = 200;

    public static string Path(int area) => $"{LayoutEdits.Path(area)}.People";

    public static string TaskOf(PeopleLight? people) => people is null ? NotAsked : people.Task ?? Own;

    public static Study UseTask(Study study, int area, string task) => LayoutEdits.Light(study, area, light => light with
    {
        People = task switch
        {
            NotAsked => null,
            Own => (light.People ?? new(null)) with { Task = null, Illuminance = light.People?.Illuminance ?? Illuminance.FromLux(FirstOwnLux) },
            _ => (light.People ?? new(task)) with { Task = task, Illuminance = null },
        },
    });

    public static Study Set(Study study, int area, Func<PeopleLight, PeopleLight> change) =>
        LayoutEdits.Light(study, area, light => light.People is { } people ? light with { People = change(people) } : light);
}
