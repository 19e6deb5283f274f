using Microsoft.EntityFrameworkCore;
using NodaTime;
using RetrofitCalc.Data.Model;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Data;

/// <summary>The catalogue: shipped rows and the workspace's own.</summary>
public sealed class CatalogueStore(IDbContextFactory<RetrofitContext> contexts, IClock clock)
{
    /// <summary>Every row, retired ones too.</summary>
    public async Task<CatalogueExtract> AllAsync(CancellationToken stop = default)
    {
        await using var db = await contexts.CreateDbContextAsync(stop);
        return CatalogueJson.Extract(await ReadAsync(db.CatalogueRows, stop));
    }

    /// <summary>Rows with what the catalogue page needs beside the values.</summary>
    public async Task<IReadOnlyList<StoredEntry>> ListAsync(CancellationToken stop = default)
    {
        await using var db = await contexts.CreateDbContextAsync(stop);
        var rows = await db.CatalogueRows.AsNoTracking().OrderBy(r => r.Name).ThenBy(r => r.Id).ToListAsync(stop);
        return [.. rows.Select(Stored)];
    }

    public async Task<StoredEntry?> FindAsync(string id, CancellationToken stop = default)
    {
        await using var db = await contexts.CreateDbContextAsync(stop);
        return await db.CatalogueRows.AsNoTracking().SingleOrDefaultAsync(r => r.Id == id, stop) is { } row ? Stored(row) : null;
    }

    /// <summary>Adds an entry (<paramref name="expectedVersion"/> 0) or replaces the version the writer has read.</summary>
    public async Task<EntryOutcome> SaveEntryAsync(CatalogueEntry entry, int expectedVersion, CancellationToken stop = default)
    {
        await using var db = await contexts.CreateDbContextAsync(stop);
        var row = await db.CatalogueRows.SingleOrDefaultAsync(r => r.Id == entry.Id, stop);
        if (row is null && expectedVersion > 0) return new EntryOutcome.Missing();
        if (row is not null && (row.Version != expectedVersion || row.Kind != CatalogueJson.KindOf(entry)))
            return new EntryOutcome.Conflict(Stored(row));
        var written = Write(db, row, entry);
        try
        {
            await db.SaveChangesAsync(stop);
            return new EntryOutcome.Saved(written.Version);
        }
        catch (DbUpdateException) when (stop.IsCancellationRequested is false)
        {
            // Another writer came between the check and the write; any other failure is the caller's to see.
            var current = await FindAsync(entry.Id, stop);
            if (current is null || current.Version == expectedVersion) throw;
            return new EntryOutcome.Conflict(current);
        }
    }

    /// <summary>An own entry with the same values under a new id; null when there is no such entry.</summary>
    public async Task<StoredEntry?> CopyAsync(string id, string newId, string newName, CancellationToken stop = default)
    {
        if (await FindAsync(id, stop) is not { } original) return null;
        await SaveEntryAsync(original.Entry with { Id = newId, Name = newName, Retired = false }, 0, stop);
        return await FindAsync(newId, stop);
    }

    /// <summary>No longer offers an entry; studies that use it keep it.</summary>
    public Task<EntryOutcome> RetireAsync(string id, CancellationToken stop = default) => SetRetiredAsync(id, true, stop);

    public Task<EntryOutcome> RestoreAsync(string id, CancellationToken stop = default) => SetRetiredAsync(id, false, stop);

    /// <summary>Deletes an own entry that nothing uses; otherwise says what does.</summary>
    public async Task<DeleteOutcome> DeleteAsync(string id, CancellationToken stop = default)
    {
        await using var db = await contexts.CreateDbContextAsync(stop);
        var row = await db.CatalogueRows.SingleOrDefaultAsync(r => r.Id == id, stop);
        if (row is null) return new DeleteOutcome(false, []);
        var users = await CatalogueUse.OfAsync(db, id, stop);
        if (users.Count > 0 || !row.Own) return new DeleteOutcome(false, users, Shipped: !row.Own);
        db.Add(CatalogueJson.Edit(row, CatalogueChange.Deleted, clock.GetCurrentInstant()));
        db.Remove(row);
        await db.SaveChangesAsync(stop);
        return new DeleteOutcome(true, []);
    }

    /// <summary>Edits of one entry, newest first.</summary>
    public async Task<IReadOnlyList<CatalogueEdit>> HistoryAsync(string id, CancellationToken stop = default)
    {
        await using var db = await contexts.CreateDbContextAsync(stop);
        return await db.CatalogueHistory.AsNoTracking().Where(h => h.EntryId == id)
            .OrderByDescending(h => h.At).ThenByDescending(h => h.Version)
            .Select(h => new CatalogueEdit(h.Version, h.Change, h.Json, h.At)).ToListAsync(stop);
    }

    /// <summary>Adds or replaces all the entries, or none when one of them fails.</summary>
    /// <exception cref="ArgumentException">Two entries have the same id, or an id is taken by another kind.</exception>
    public async Task ImportAsync(IReadOnlyList<CatalogueEntry> entries, CancellationToken stop = default)
    {
        await using var db = await contexts.CreateDbContextAsync(stop);
        var ids = entries.Select(e => e.Id).ToList();
        if (ids.GroupBy(i => i).FirstOrDefault(g => g.Count() > 1) is { } twice)
            throw new ArgumentException($"The id {twice.Key} occurs twice.", nameof(entries));
        var present = await db.CatalogueRows.Where(r => ids.Contains(r.Id)).ToDictionaryAsync(r => r.Id, stop);
        foreach (var entry in entries)
        {
            var row = present.GetValueOrDefault(entry.Id);
            if (row is not null && row.Kind != CatalogueJson.KindOf(entry))
                throw new ArgumentException($"The id {entry.Id} already names a {row.Kind}.", nameof(entries));
            Write(db, row, entry);
        }
        await db.SaveChangesAsync(stop);
    }

    /// <summary>Fills the study with every row its lines and options name. Rows the study already holds stay as they are,
    /// so that its figures do not shift when someone edits the catalogue; rows nothing names are dropped.</summary>
    public async Task<Study> ResolveAsync(Study study, CancellationToken stop = default) =>
        study with { Catalogue = CatalogueUse.Needed(study, [.. study.Catalogue.All, .. (await AllAsync(stop)).All]) };

    /// <summary>The same with the catalogue's present values; rows only the study holds stay.</summary>
    public async Task<Study> RefreshAsync(Study study, CancellationToken stop = default) =>
        study with { Catalogue = CatalogueUse.Needed(study, [.. (await AllAsync(stop)).All, .. study.Catalogue.All]) };

    private CatalogueRow Write(RetrofitContext db, CatalogueRow? row, CatalogueEntry entry)
    {
        var change = row is null ? CatalogueChange.Added : CatalogueChange.Edited;
        if (row is null) db.Add(row = CatalogueJson.NewRow(entry, own: true));
        else CatalogueJson.Fill(row, entry);
        row.Own = true;
        db.Add(CatalogueJson.Edit(row, change, clock.GetCurrentInstant()));
        return row;
    }

    private async Task<EntryOutcome> SetRetiredAsync(string id, bool retired, CancellationToken stop)
    {
        await using var db = await contexts.CreateDbContextAsync(stop);
        if (await db.CatalogueRows.SingleOrDefaultAsync(r => r.Id == id, stop) is not { } row) return new EntryOutcome.Missing();
        CatalogueJson.Fill(row, CatalogueJson.Read(row.Kind, row.Json) with { Retired = retired });
        db.Add(CatalogueJson.Edit(row, retired ? CatalogueChange.Retired : CatalogueChange.Restored, clock.GetCurrentInstant()));
        await db.SaveChangesAsync(stop);
        return new EntryOutcome.Saved(row.Version);
    }

    private static async Task<List<CatalogueEntry>> ReadAsync(IQueryable<CatalogueRow> rows, CancellationToken stop) =>
        [.. (await rows.AsNoTracking().ToListAsync(stop)).Select(r => CatalogueJson.Read(r.Kind, r.Json))];

    private static StoredEntry Stored(CatalogueRow row) =>
        new(CatalogueJson.Read(row.Kind, row.Json), row.Kind, row.Version, row.Own);
}
