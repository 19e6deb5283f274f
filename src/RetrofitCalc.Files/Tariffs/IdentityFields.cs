using NodaTime;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Files.Tariffs;

/// <summary>Name, source and dates.</summary>
internal static class IdentityFields
{
    private static readonly string[] SourceFields = ["utility", "source", "sourceparent", "uri", "label"];

    public static Tariff Read(RecordNode root) => new()
    {
        Name = Name(root),
        Source = Source(root),
        ValidFrom = Date(root, "startdate"),
        ValidTo = Date(root, "enddate"),
    };

    private static string Name(RecordNode root)
    {
        if (root.Find("name") is { } node)
        {
            root.Log.Used(node.Path, "Name of the tariff.");
            return node.Text() is { Length: > 0 } name ? name : "Rate without a name";
        }
        root.Log.Doubtful("$", "The record has no name.");
        return "Rate without a name";
    }

    private static Provenance Source(RecordNode root)
    {
        var parts = new List<string>();
        foreach (var name in SourceFields)
            if (root.Find(name) is { } node && node.Text() is { Length: > 0 } text)
            {
                root.Log.Used(node.Path, "Part of the source.");
                parts.Add(name == "label" ? $"record {text}" : text);
            }
        return new(EvidenceKind.Tested, string.Join("; ", parts.Append("US Utility Rate Database").Distinct()));
    }

    /// <summary>Seconds since 1970, UTC. Records hold midnight in UTC or in the US, which is the same day in UTC.</summary>
    private static LocalDate? Date(RecordNode root, string name)
    {
        if (root.Find(name) is not { } node || node.Number() is not { } seconds)
            return null;
        if (seconds is < -2.2e9 or > 7.3e9)
        {
            root.Log.Wrong(node.Path, "must be seconds since 1970, between the years 1900 and 2200");
            return null;
        }
        var day = Instant.FromUnixTimeSeconds((long)seconds).InUtc().Date;
        root.Log.Used(node.Path, $"{(name == "startdate" ? "First" : "Last")} day in force: {day:yyyy-MM-dd}.");
        return day;
    }
}
