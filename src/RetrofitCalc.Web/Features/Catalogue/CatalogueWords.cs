using RetrofitCalc.Data;
using RetrofitCalc.Engine.Catalogue;

namespace RetrofitCalc.Web.Features.Catalogue;

/// <summary>Evidence and edits in plain words.</summary>
public static class CatalogueWords
{
    /// <summary>The kind of evidence, and that it was not read again where so.</summary>
    public static string Evidence(Provenance source) =>
        source.Kind.ToString().ToLowerInvariant() + (source.FromMemory ? ", from memory" : "");

    public static string Change(CatalogueChange change) => change switch
    {
        CatalogueChange.Shipped => "shipped with the program",
        CatalogueChange.Added => "added",
        CatalogueChange.Edited => "edited",
        CatalogueChange.Retired => "retired",
        CatalogueChange.Restored => "brought back",
        _ => "deleted",
    };
}
