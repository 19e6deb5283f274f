using Microsoft.EntityFrameworkCore;
using NodaTime;
using RetrofitCalc.Data.Model;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Data;

/// <summary>Tariffs to choose from: shipped ones and the workspace's own. A study holds a copy, which no edit here changes.</summary>
public sealed class TariffLibrary(IDbContextFactory<RetrofitContext> contexts, IClock clock)
{
    /// <summary>By name; retired ones only when asked for.</summary>
    public async Task<IReadOnlyList<StoredTariff>> ListAsync(bool retiredToo = false, CancellationToken stop = default)
    {
        await using var db = await contexts.CreateDbContextAsync(stop);
        var rows = await db.Tariffs.AsNoTracking().Where(r => retiredToo || !r.Retired).OrderBy(r => r.Name).ThenBy(r => r.Id).ToListAsync(stop);
        return [.. rows.Select(TariffJson.Stored)];
    }

    public async Task<StoredTariff?> FindAsync(string id, CancellationToken stop = default)
    {
        await using var db = await contexts.CreateDbContextAsync(stop);
        return await db.Tariffs.AsNoTracking().SingleOrDefaultAsync(r => r.Id == id, stop) is { } row ? TariffJson.Stored(row) : null;
    }

    /// <summary>Adds an own tariff, such as that of a study.</summary>
    public async Task<StoredTariff> AddAsync(Tariff tariff, string note = "", CancellationToken stop = default)
    {
        await using var db = await contexts.CreateDbContextAsync(stop);
        var row = TariffJson.NewRow(Guid.CreateVersion7().ToString(), tariff, note, own: true);
        db.Add(row);
        db.Add(TariffJson.Edit(row, CatalogueChange.Added, clock.GetCurrentInstant()));
        await db.SaveChangesAsync(stop);
        return TariffJson.Stored(row);
    }

    /// <summary>Replaces the version the writer has read; the one before stays in the history. A shipped tariff becomes an own one.</summary>
    public Task<TariffOutcome> SaveAsync(StoredTariff edited, CancellationToken stop = default) =>
        ChangeAsync(edited.Id, edited.Version, CatalogueChange.Edited, row =>
        {
            TariffJson.Fill(row, edited.Tariff, edited.Note);
            row.Own = true;
        }, stop);

    /// <summary>No longer offers a tariff; nothing is deleted.</summary>
    public Task<TariffOutcome> RetireAsync(string id, CancellationToken stop = default) => SetRetiredAsync(id, true, stop);

    public Task<TariffOutcome> RestoreAsync(string id, CancellationToken stop = default) => SetRetiredAsync(id, false, stop);

    /// <summary>Edits of one tariff, newest first.</summary>
    public async Task<IReadOnlyList<TariffEdit>> HistoryAsync(string id, CancellationToken stop = default)
    {
        await using var db = await contexts.CreateDbContextAsync(stop);
        var rows = await db.TariffHistory.AsNoTracking().Where(h => h.TariffId == id).OrderByDescending(h => h.Version).ToListAsync(stop);
        return [.. rows.Select(row => new TariffEdit(row.Version, row.Change, TariffJson.Read(row.Json), row.At))];
    }

    private Task<TariffOutcome> SetRetiredAsync(string id, bool retired, CancellationToken stop) =>
        ChangeAsync(id, null, retired ? CatalogueChange.Retired : CatalogueChange.Restored, row => (row.Retired, row.Version) = (retired, row.Version + 1), stop);

    private async Task<TariffOutcome> ChangeAsync(string id, int? expectedVersion, CatalogueChange change, Action<TariffRow> edit, CancellationToken stop)
    {
        await using var db = await contexts.CreateDbContextAsync(stop);
        if (await db.Tariffs.SingleOrDefaultAsync(r => r.Id == id, stop) is not { } row)
            return new TariffOutcome.Missing();
        if (expectedVersion is { } expected && expected != row.Version)
            return new TariffOutcome.Conflict(TariffJson.Stored(row));
        edit(row);
        db.Add(TariffJson.Edit(row, change, clock.GetCurrentInstant()));
        try
        {
            await db.SaveChangesAsync(stop);
            return new TariffOutcome.Saved(row.Version);
        }
        catch (DbUpdateConcurrencyException)
        {
            // Another writer came between the check and the write.
            return await FindAsync(id, stop) is { } current ? new TariffOutcome.Conflict(current) : new TariffOutcome.Missing();
        }
    }
}
