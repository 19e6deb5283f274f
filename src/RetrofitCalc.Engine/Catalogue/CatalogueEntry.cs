namespace RetrofitCalc.Engine.Catalogue;

/// <summary>What every row of the catalogue has: a name, and where its values come from.</summary>
public abstract record CatalogueEntry
{
    /// <summary>Stable identifier: lower-case letters, digits and hyphens.</summary>
    public required string Id { get; init; }

    /// <summary>Name in trade terms.</summary>
    public required string Name { get; init; }

    /// <summary>Source of the entry's values, unless <see cref="FieldSources"/> names another for one of them.</summary>
    public required Provenance Source { get; init; }

    /// <summary>Sources of single values, by property name.</summary>
    public IReadOnlyDictionary<string, Provenance> FieldSources { get; init; } = new Dictionary<string, Provenance>();

    /// <summary>Retired entries stay readable where they are used but are no longer offered.</summary>
    public bool Retired { get; init; }

    /// <summary>Remark shown beside the entry.</summary>
    public string Note { get; init; } = "";

    /// <summary>Where one value comes from.</summary>
    /// <param name="property">Name of the property, as in code.</param>
    public Provenance SourceOf(string property) => FieldSources.TryGetValue(property, out var own) ? own : Source;
}
