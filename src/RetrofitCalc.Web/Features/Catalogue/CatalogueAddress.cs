using Microsoft.AspNetCore.Http.Extensions;

namespace RetrofitCalc.Web.Features.Catalogue;

/// <summary>What the catalogue shows, as it stands in the address: any view can be kept, sent and opened again.</summary>
public sealed record CatalogueAddress(string Base, string Kind)
{
    public string? Search { get; init; }

    public string? Entry { get; init; }

    /// <summary>Whether the entry is being edited; with no entry, a new one.</summary>
    public bool Editing { get; init; }

    /// <summary>Entries side by side.</summary>
    public IReadOnlyList<string> Compared { get; init; } = [];

    public CatalogueAddress With(string compared) => this with
    {
        Compared = Compared.Contains(compared) ? [.. Compared.Where(id => id != compared)] : [.. Compared.TakeLast(2), compared],
    };

    public override string ToString()
    {
        var query = new QueryBuilder { { "kind", Kind } };
        if (!string.IsNullOrWhiteSpace(Search)) query.Add("q", Search);
        if (Entry is not null) query.Add("entry", Entry);
        if (Editing) query.Add("edit", "1");
        if (Compared.Count > 0) query.Add("with", string.Join(',', Compared));
        return Base + query;
    }
}
