using NodaTime;
using RetrofitCalc.Engine.Catalogue;

namespace RetrofitCalc.Data;

/// <param name="Version">Number of the edit that was read; a save must name it.</param>
/// <param name="Own">Added or edited here; shipped rows nobody touched are not own.</param>
public sealed record StoredEntry(CatalogueEntry Entry, CatalogueKind Kind, int Version, bool Own)
{
    /// <summary>The entry as an edit of it left it.</summary>
    public CatalogueEntry Read(string json) => CatalogueJson.Read(Kind, json);
}

/// <summary>How the save of an entry ended.</summary>
public abstract record EntryOutcome
{
    private EntryOutcome() { }

    public sealed record Saved(int NewVersion) : EntryOutcome;

    /// <summary>Someone else saved first, or the id is taken; nothing was written.</summary>
    public sealed record Conflict(StoredEntry Current) : EntryOutcome;

    public sealed record Missing : EntryOutcome;
}

/// <param name="UsedBy">Names of the studies and set-ups that use the entry.</param>
/// <param name="Shipped">Shipped entries can only be retired.</param>
public sealed record DeleteOutcome(bool Deleted, IReadOnlyList<string> UsedBy, bool Shipped = false);

/// <summary>One edit of an entry, with the values after it.</summary>
public sealed record CatalogueEdit(int Version, CatalogueChange Change, string Json, Instant At);
