using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>Recommended light for what people do.</summary>
/// <param name="Id">Stable identifier, as studies name it.</param>
/// <param name="Name">What people do, and whose recommendation it is.</param>
/// <param name="Mean">Mean illuminance on the plane they work on, maintained. [lx]</param>
/// <param name="Source">Where it comes from.</param>
public sealed record RecommendedLight(string Id, string Name, Illuminance Mean, Provenance Source);

/// <summary>Recommended mean illuminances (S-79). All from memory: check the edition in force, and local rules, which may ask for more.</summary>
public static class TaskLights
{
    private const string European = "EN 12464-1";
    private const string American = "IES";

    /// <summary>All of them, those of one place together.</summary>
    public static IReadOnlyList<RecommendedLight> All { get; } =
    [
        Of("packing", "Packing and dispatch", 300, European, "dispatch and packing areas"),
        Of("packing-ies", "Packing and dispatch", 300, American, "materials handling: wrapping, packing, labelling"),
        Of("corridor", "Corridors", 100, European, "circulation areas and corridors"),
        Of("corridor-ies", "Corridors", 50, American, "corridors, circulation"),
        Of("stairs", "Stairs", 100, European, "stairs, escalators"),
        Of("stairs-ies", "Stairs", 50, American, "stairways, low activity"),
        Of("storage", "Storage, people there now and then", 100, European, "store and stock rooms"),
        Of("storage-occupied", "Storage, people there all the time", 200, European, "store and stock rooms, continuously occupied"),
        Of("storage-ies", "Storage, small items", 300, American, "warehouse, active storage of small items"),
        Of("potting", "Potting and bench work", 300, European, "taken as assembly work, medium: the standard names no potting"),
        Of("potting-ies", "Potting and bench work", 300, American, "taken as simple assembly: no potting named"),
        Of("grading", "Grading and inspection", 500, European, "taken as fine work: sorting by eye"),
        Of("grading-ies", "Grading and inspection", 500, American, "inspection, moderately difficult"),
        Of("office", "Office: writing, reading, screens", 500, European, "offices"),
        Of("office-ies", "Office: writing, reading, screens", 400, American, "offices, between screens at 300 and paper at 500"),
        Of("plant-room", "Plant and switchgear rooms", 200, European, "plant rooms, switch gear rooms"),
    ];

    /// <summary>The one with an id; null when there is none.</summary>
    /// <param name="id">Id, or null.</param>
    public static RecommendedLight? Find(string? id) => All.FirstOrDefault(task => task.Id == id);

    private static RecommendedLight Of(string id, string name, double lux, string body, string entry) =>
        new(id, $"{name} ({body})", Illuminance.FromLux(lux), new(EvidenceKind.Practice, $"{body}: {entry}", FromMemory: true));
}
