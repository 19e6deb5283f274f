using NodaTime;

namespace RetrofitCalc.Data.Model;

public sealed class CatalogueRow
{
    public required string Id { get; set; }
    public required CatalogueKind Kind { get; set; }
    public required string Name { get; set; }
    public required string Json { get; set; }

    /// <summary>Counts edits; a writer who read an older number is refused.</summary>
    public required int Version { get; set; }

    public required bool Retired { get; set; }

    /// <summary>False while the row is as shipped; a later release may then correct it.</summary>
    public required bool Own { get; set; }
}

/// <summary>One edit of a catalogue row, with the values after it.</summary>
public sealed class CatalogueHistoryRow
{
    public required Guid Id { get; set; }
    public required string EntryId { get; set; }
    public required int Version { get; set; }
    public required CatalogueChange Change { get; set; }
    public required string Json { get; set; }
    public required Instant At { get; set; }
}
