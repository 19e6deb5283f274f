using RetrofitCalc.Data;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Files.Catalogues;

namespace RetrofitCalc.Web.Features.Catalogue;

/// <summary>Evidence and edits in plain words.</summary>
public static class CatalogueWords
{
    /// <summary>The kind of evidence, and that it was not read again where so.</summary>
    public static string Evidence(Provenance source) =>
        source.Kind.ToString().ToLowerInvariant() + (source.FromMemory ? ", from memory" : "");

    /// <summary>A value as people read it: words of a list apart, as doubleEnd is "double end".</summary>
    public static string Value(EntryCell cell) => cell.Words.Count == 0 ? cell.Text
        : string.Concat(cell.Text.Select(c => char.IsUpper(c) ? $" {char.ToLowerInvariant(c)}" : $"{c}"));

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
