using System.Globalization;
using NodaTime;
using RetrofitCalc.Engine.Carbon;
using RetrofitCalc.Web.Shared.Fields;

namespace RetrofitCalc.Web.Features.Survey;

/// <summary>What one can choose from about the place of a site.</summary>
public static class SitePlaces
{
    /// <summary>Country packs of the safety rules.</summary>
    public static IReadOnlyList<Choice<string?>> Jurisdictions { get; } =
    [
        new("us", "United States"), new("ca", "Canada"), new("eu", "European Union"), new("gb", "Great Britain"), new("au", "Australia"), new("other", "elsewhere"),
    ];

    /// <summary>Regions whose emission factors are known.</summary>
    public static IReadOnlyList<Choice<string?>> GridRegions { get; } =
        [new(null, "none of these, or not known"), .. GridFactors.All.Select(region => new Choice<string?>(region.Code, $"{region.Code}: {region.Name}"))];

    /// <summary>Every zone of the time-zone database this program ships with.</summary>
    public static IReadOnlyList<Choice<string>> Zones { get; } =
        [.. DateTimeZoneProviders.Tzdb.Ids.Where(id => id.Contains('/')).Select(id => new Choice<string>(id, id.Replace('_', ' ')))];

    /// <summary>Countries of this machine, by how they write numbers.</summary>
    public static IReadOnlyList<Choice<string>> Cultures { get; } =
        [.. CultureInfo.GetCultures(CultureTypes.SpecificCultures).Where(c => c.Name.Length is > 0 and <= 6).OrderBy(c => c.EnglishName, StringComparer.Ordinal)
            .Select(c => new Choice<string>(c.Name, $"{c.EnglishName}: {1234.5.ToString("N1", c)}"))];
}
