using System.Text.RegularExpressions;

namespace RetrofitCalc.Web.Shared.Fields;

/// <summary>Names of fields: as the engine writes places in a study, and as ids of the page.</summary>
public static partial class FieldNames
{
    public static string Full(string path, string name) => path.Length == 0 ? name : $"{path}.{name}";

    public static string Id(string path, string name) => "f-" + NotInIds().Replace(Full(path, name), "-").Trim('-').ToLowerInvariant();

    /// <summary>"LightsOn" as "lights on".</summary>
    public static string Words(string name) => CapitalInside().Replace(name, m => " " + m.Value.ToLowerInvariant());

    [GeneratedRegex("[^A-Za-z0-9]+")]
    private static partial Regex NotInIds();

    [GeneratedRegex("(?<=[a-z])[A-Z]")]
    private static partial Regex CapitalInside();
}
