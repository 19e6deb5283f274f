using Microsoft.EntityFrameworkCore;
using NodaTime;
using RetrofitCalc.Data.Model;
using RetrofitCalc.Engine.Catalogue;

namespace RetrofitCalc.Data.Seed;

/// <summary>Adds shipped rows that are missing and corrects those nobody has edited.</summary>
internal sealed class CatalogueSeeding(RetrofitContext db, Instant now)
{
    public async Task RunAsync(CancellationToken stop)
    {
        var present = await db.CatalogueRows.ToDictionaryAsync(r => r.Id, stop);
        var edited = await db.CatalogueHistory.Select(h => h.EntryId).Distinct().ToHashSetAsync(stop);
        foreach (var entry in Shipped.Catalogue().All)
            if (present.TryGetValue(entry.Id, out var row)) Correct(row, entry);
            else if (!edited.Contains(entry.Id)) Add(entry);
    }

    private void Add(CatalogueEntry entry)
    {
        var row = CatalogueJson.NewRow(entry, own: false);
        db.Add(row);
        db.Add(CatalogueJson.Edit(row, CatalogueChange.Shipped, now));
    }

    private void Correct(CatalogueRow row, CatalogueEntry entry)
    {
        if (row.Own || row.Retired || row.Json == CatalogueJson.Write(entry)) return;
        CatalogueJson.Fill(row, entry);
        db.Add(CatalogueJson.Edit(row, CatalogueChange.Shipped, now));
    }
}
