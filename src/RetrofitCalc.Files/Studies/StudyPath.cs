using System.Text.Json;

namespace RetrofitCalc.Files.Studies;

/// <summary>Turns the engine's paths into those of the study file.</summary>
internal static class StudyPath
{
    /// <summary>Areas[2].Seasons[0].End becomes $.study.areas[2].seasons[0].end.</summary>
    public static string InFile(string enginePath) => enginePath.Length == 0
        ? "$.study"
        : "$.study." + string.Join('.', enginePath.Split('.').Select(JsonNamingPolicy.CamelCase.ConvertName));
}
