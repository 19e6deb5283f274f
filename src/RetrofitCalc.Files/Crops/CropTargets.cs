using System.Reflection;
using System.Text.Json;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Studies;

namespace RetrofitCalc.Files.Crops;

/// <summary>Published light targets of crops, to choose from and to edit. Read once.</summary>
/// <remarks>
/// There is no hard requirement: temperature, carbon dioxide and culture move it (Runkle, GPN). Where the source gives a least light as a
/// range, its upper end is taken. Each row's note says what was only a range tested.
/// </remarks>
public static class CropTargets
{
    private static readonly Lazy<IReadOnlyList<LightTarget>> Rows = new(Read);

    /// <summary>All rows, leafy crops first.</summary>
    public static IReadOnlyList<LightTarget> All => Rows.Value;

    /// <summary>The row of a crop and stage by its name; null when there is none.</summary>
    public static LightTarget? Find(string name) => All.FirstOrDefault(target => string.Equals(target.Crop, name, StringComparison.OrdinalIgnoreCase));

    private static LightTarget[] Read()
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream("RetrofitCalc.Files.Crops.crop-targets.json")!;
        return JsonSerializer.Deserialize<LightTarget[]>(stream, RetrofitJson.Options)!;
    }
}
