namespace RetrofitCalc.Web.Shared;

/// <summary>The places in a study, in the order a manager works.</summary>
public sealed record Place(string Path, string Name)
{
    public static IReadOnlyList<Place> All { get; } =
    [
        new("survey", "Survey"), new("schedules", "Schedules"), new("tariff", "Tariff"), new("options", "Options"),
        new("light", "Crop light"), new("results", "Results"), new("safety", "Safety"), new("summary", "Summary"), new("catalogue", "Catalogue"),
    ];
}
