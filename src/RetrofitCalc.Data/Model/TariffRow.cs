using NodaTime;

namespace RetrofitCalc.Data.Model;

public sealed class TariffRow
{
    public required string Id { get; set; }
    public required string Name { get; set; }

    /// <summary>What a reader must know beside the values, such as which of them were derived.</summary>
    public required string Note { get; set; }

    /// <summary>The tariff as a study file holds it.</summary>
    public required string Json { get; set; }

    /// <summary>Counts edits; a writer who read an older number is refused.</summary>
    public required int Version { get; set; }

    public required bool Retired { get; set; }

    /// <summary>False while the row is as shipped; a later release may then correct it.</summary>
    public required bool Own { get; set; }
}

/// <summary>One edit of a tariff, with the values after it.</summary>
public sealed class TariffHistoryRow
{
    public required Guid Id { get; set; }
    public required string TariffId { get; set; }
    public required int Version { get; set; }
    public required CatalogueChange Change { get; set; }
    public required string Json { get; set; }
    public required Instant At { get; set; }
}
