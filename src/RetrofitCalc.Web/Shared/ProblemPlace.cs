namespace RetrofitCalc.Web.Shared;

/// <summary>Where in the program something wrong can be mended.</summary>
public static class ProblemPlace
{
    /// <summary>First match wins; what no other place shows stands on the survey.</summary>
    private static readonly (Func<string, bool> Is, string Place)[] ByPath =
    [
        (path => path == "Site.PowerFactor" || path.StartsWith("Tariff", StringComparison.Ordinal) || path.StartsWith("Meter", StringComparison.Ordinal), "tariff"),
        (path => path.StartsWith("Areas", StringComparison.Ordinal) || path.StartsWith("Weather", StringComparison.Ordinal), "schedules"),
        (path => path.StartsWith("Options", StringComparison.Ordinal) || path.StartsWith("Assumptions", StringComparison.Ordinal), "options"),
        (path => path.StartsWith("Catalogue", StringComparison.Ordinal), "catalogue"),
        (path => path.StartsWith("Safety", StringComparison.Ordinal), "safety"),
    ];

    /// <summary>The place that shows the field of a problem.</summary>
    public static Place Of(string path)
    {
        var place = ByPath.FirstOrDefault(known => known.Is(path)).Place ?? "survey";
        return Place.All.First(known => known.Path == place);
    }
}
