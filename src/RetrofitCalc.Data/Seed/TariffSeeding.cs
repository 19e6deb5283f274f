using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace RetrofitCalc.Data.Seed;

/// <summary>Adds shipped tariffs that are missing and corrects those nobody has edited. None is ever deleted, so one that is missing was never there.</summary>
internal sealed class TariffSeeding(RetrofitContext db, Instant now)
{
    public async Task RunAsync(CancellationToken stop)
    {
        var present = await db.Tariffs.ToDictionaryAsync(r => r.Id, stop);
        foreach (var (id, note, tariff) in Shipped.Tariffs())
        {
            if (!present.TryGetValue(id, out var row))
                db.Add(row = TariffJson.NewRow(id, tariff, note, own: false));
            else if (row.Own || row.Retired || (row.Json == TariffJson.Write(tariff) && row.Note == note))
                continue;
            else
                TariffJson.Fill(row, tariff, note);
            db.Add(TariffJson.Edit(row, CatalogueChange.Shipped, now));
        }
    }
}
