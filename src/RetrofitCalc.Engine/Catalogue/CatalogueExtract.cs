namespace RetrofitCalc.Engine.Catalogue;

/// <summary>Catalogue rows by kind: the whole catalogue, or the rows one study uses, kept with it so that a later edit changes no issued figure.</summary>
public sealed record CatalogueExtract
{
    /// <summary>Existing set-ups.</summary>
    public IReadOnlyList<SetUp> SetUps { get; init; } = [];

    /// <summary>Lamps.</summary>
    public IReadOnlyList<Lamp> Lamps { get; init; } = [];

    /// <summary>Ballasts.</summary>
    public IReadOnlyList<Ballast> Ballasts { get; init; } = [];

    /// <summary>Direct-wire tubes.</summary>
    public IReadOnlyList<DirectWireTube> Tubes { get; init; } = [];

    /// <summary>Ready-wired luminaires.</summary>
    public IReadOnlyList<ReadyWiredLuminaire> Luminaires { get; init; } = [];

    /// <summary>All rows, of every kind.</summary>
    public IEnumerable<CatalogueEntry> All => [.. SetUps, .. Lamps, .. Ballasts, .. Tubes, .. Luminaires];
}
