using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Web.Features.Schedules;

namespace RetrofitCalc.Web.Features.Plant;

/// <summary>The plant of the site or of one area: what it is, where it stands, how it is changed.</summary>
/// <param name="Path">Where it stands, as the engine names places.</param>
/// <param name="Plant">The plant.</param>
/// <param name="Change">Changes it in a study.</param>
/// <param name="Area">Id of the area whose own it is; null for the site's.</param>
public sealed record PlantPlace(string Path, PlantInteraction Plant, Func<Study, Func<PlantInteraction, PlantInteraction>, Study> Change, string? Area = null)
{
    public static PlantPlace OfSite(Study study) =>
        new("Site.Plant", study.Site.Plant, (s, change) => s with { Site = s.Site with { Plant = change(s.Site.Plant) } });

    /// <summary>The plant of an area that has its own.</summary>
    public static PlantPlace OfArea(Study study, int index) => new(
        $"Areas[{index}].Plant", study.Areas[index].Plant!,
        (s, change) => ScheduleEdits.Area(s, index, area => area with { Plant = change(area.Plant ?? s.Site.Plant) }),
        study.Areas[index].Id);

    /// <summary>Whether an area's heat comes to this plant.</summary>
    public bool Serves(Study study, string? areaId) => Area is null
        ? study.Areas.Any(area => area.Id == areaId && area.Plant is null)
        : Area == areaId;

    /// <summary>Puts a value that a field has read into the plant.</summary>
    public Func<Study, T, Study> Set<T>(Func<PlantInteraction, T, PlantInteraction> put) => (study, value) => Change(study, plant => put(plant, value));
}
