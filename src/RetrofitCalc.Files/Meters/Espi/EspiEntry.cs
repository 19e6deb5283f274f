namespace RetrofitCalc.Files.Meters.Espi;

/// <summary>One entry of the feed: its links, and whatever of interest stands in it.</summary>
internal sealed class EspiEntry
{
    private const int MostLinks = 100;

    public string Title { get; set; } = "";
    public string Self { get; private set; } = "";
    public string Up { get; private set; } = "";
    public List<string> Related { get; } = [];
    public string? ServiceKind { get; set; }
    public bool IsMeter { get; set; }
    public EspiReadingType? Type { get; set; }
    public List<EspiReading> Readings { get; } = [];

    public void Link(string? relation, string? address)
    {
        var known = (address ?? "").Trim().TrimEnd('/').ToLowerInvariant();
        if (relation == "self") Self = known;
        else if (relation == "up") Up = known;
        else if (relation == "related" && Related.Count < MostLinks) Related.Add(known);
    }
}

/// <summary>A reading with its numbers as the file writes them; null where it has none, or none that can be read.</summary>
internal readonly record struct EspiReading(long? Start, long? Seconds, long? Value, int Quality, int Line);
