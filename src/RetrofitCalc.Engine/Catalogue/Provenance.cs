namespace RetrofitCalc.Engine.Catalogue;

/// <summary>How a value came to be known, best first.</summary>
public enum EvidenceKind
{
    /// <summary>Read with an instrument at the site.</summary>
    Measured,
    /// <summary>Tested or published for this very combination.</summary>
    Tested,
    /// <summary>Computed from published parts.</summary>
    Computed,
    /// <summary>Read from a nameplate or a sheet's headline.</summary>
    Nameplate,
    /// <summary>Common practice or memory: no document was read.</summary>
    Practice,
    /// <summary>Invented for an example.</summary>
    Invented,
    /// <summary>Nobody has said where it comes from.</summary>
    Unsourced,
}

/// <summary>Where a value comes from.</summary>
/// <param name="Kind">How it came to be known.</param>
/// <param name="Source">Author, title, year, page or table; empty only when unsourced.</param>
/// <param name="FromMemory">True when the source is named from memory and was not read again: shown wherever the value is used.</param>
public sealed record Provenance(EvidenceKind Kind, string Source, bool FromMemory = false)
{
    /// <summary>No source given.</summary>
    public static Provenance None { get; } = new(EvidenceKind.Unsourced, "");
}
