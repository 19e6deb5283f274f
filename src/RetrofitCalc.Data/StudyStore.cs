using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using NodaTime;
using RetrofitCalc.Data.Model;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Studies;

namespace RetrofitCalc.Data;

/// <summary>Studies of the local workspace. Every call opens and closes its own context.</summary>
public sealed class StudyStore(IDbContextFactory<RetrofitContext> contexts, IClock clock)
{
    public const string NoDrafts = "{}";

    /// <summary>Newest first.</summary>
    public async Task<IReadOnlyList<StudyHeadline>> ListAsync(bool archived, CancellationToken stop = default)
    {
        await using var db = await contexts.CreateDbContextAsync(stop);
        var rows = await db.Studies.AsNoTracking()
            .Where(s => s.WorkspaceId == WorkspaceRow.Local && s.Archived == archived)
            .OrderByDescending(s => s.Updated).ThenBy(s => s.Id)
            .Select(s => new { s.Id, s.Name, s.Invented, s.Updated, s.Archived, s.HeadlineJson })
            .ToListAsync(stop);
        return [.. rows.Select(r => new StudyHeadline(r.Id, r.Name, r.Invented, r.Updated, r.Archived, Figures(r.HeadlineJson)))];
    }

    public async Task<StoredStudy?> FindAsync(Guid id, CancellationToken stop = default)
    {
        await using var db = await contexts.CreateDbContextAsync(stop);
        return await db.Studies.AsNoTracking().SingleOrDefaultAsync(s => s.Id == id, stop) is { } row ? Stored(row) : null;
    }

    public async Task<StoredStudy> AddAsync(Study study, CancellationToken stop = default)
    {
        await using var db = await contexts.CreateDbContextAsync(stop);
        var row = NewRow(Guid.CreateVersion7(), study, clock.GetCurrentInstant());
        db.Add(row);
        await db.SaveChangesAsync(stop);
        return Stored(row);
    }

    /// <summary>Replaces the study if nobody saved since the edit began.</summary>
    public async Task<SaveOutcome> SaveAsync(StudyEdit edit, CancellationToken stop = default)
    {
        await using var db = await contexts.CreateDbContextAsync(stop);
        if (await db.Studies.SingleOrDefaultAsync(s => s.Id == edit.Id, stop) is not { } row) return new SaveOutcome.Missing();
        if (row.Revision != edit.ExpectedRevision) return new SaveOutcome.Conflict(Stored(row));
        await StudyHistory.KeepAsync(db, row, clock.GetCurrentInstant(), stop);
        Fill(row, edit, clock.GetCurrentInstant());
        return await CommitAsync(db, row, stop);
    }

    /// <summary>Fills in the figures of the list without a new revision; does nothing when the study was saved since.</summary>
    public async Task SetHeadlineAsync(Guid id, int revision, StudyHeadlineFigures figures, CancellationToken stop = default)
    {
        var json = JsonSerializer.Serialize(figures, RetrofitJson.Options);
        await using var db = await contexts.CreateDbContextAsync(stop);
        await db.Studies.Where(s => s.Id == id && s.Revision == revision).ExecuteUpdateAsync(s => s.SetProperty(x => x.HeadlineJson, json), stop);
    }

    public Task<bool> ArchiveAsync(Guid id, CancellationToken stop = default) => SetArchivedAsync(id, true, stop);

    public Task<bool> RestoreAsync(Guid id, CancellationToken stop = default) => SetArchivedAsync(id, false, stop);

    /// <summary>A new study with the same content and none of the history; null when there is no such study.</summary>
    public async Task<StoredStudy?> CopyAsync(Guid id, string newName, CancellationToken stop = default) =>
        await FindAsync(id, stop) is { } original ? await AddAsync(original.Study with { Name = newName }, stop) : null;

    /// <summary>Removes the study and its history for good; false when there was none.</summary>
    public async Task<bool> DeleteAsync(Guid id, CancellationToken stop = default)
    {
        await using var db = await contexts.CreateDbContextAsync(stop);
        return await db.Studies.Where(s => s.Id == id).ExecuteDeleteAsync(stop) > 0;
    }

    internal static StudyRow NewRow(Guid id, Study study, Instant now) => new()
    {
        Id = id,
        WorkspaceId = WorkspaceRow.Local,
        Name = PlainText.Storable(study.Name),
        Invented = study.Invented,
        StudyJson = Json(study),
        DraftsJson = NoDrafts,
        Revision = 1,
        Created = now,
        Updated = now,
        Archived = false,
    };

    private static void Fill(StudyRow row, StudyEdit edit, Instant now)
    {
        row.Name = PlainText.Storable(edit.Study.Name);
        row.Invented = edit.Study.Invented;
        row.StudyJson = Json(edit.Study);
        row.DraftsJson = PlainText.Storable(edit.DraftsJson);
        row.HeadlineJson = edit.Headline is null ? null : JsonSerializer.Serialize(edit.Headline, RetrofitJson.Options);
        row.Revision = edit.ExpectedRevision + 1;
        row.Updated = now;
    }

    /// <summary>The database compares the revision once more: two writers may both have passed the check before.</summary>
    private async Task<SaveOutcome> CommitAsync(RetrofitContext db, StudyRow row, CancellationToken stop)
    {
        try
        {
            await db.SaveChangesAsync(stop);
            return new SaveOutcome.Saved(row.Revision);
        }
        catch (DbUpdateConcurrencyException)
        {
            return await FindAsync(row.Id, stop) is { } current ? new SaveOutcome.Conflict(current) : new SaveOutcome.Missing();
        }
    }

    private async Task<bool> SetArchivedAsync(Guid id, bool archived, CancellationToken stop)
    {
        await using var db = await contexts.CreateDbContextAsync(stop);
        return await db.Studies.Where(s => s.Id == id).ExecuteUpdateAsync(s => s.SetProperty(x => x.Archived, archived), stop) > 0;
    }

    internal static string Json(Study study) => JsonSerializer.Serialize(study, RetrofitJson.Options);

    internal static Study FromJson(string json) => JsonSerializer.Deserialize<Study>(json, RetrofitJson.Options)!;

    private static StoredStudy Stored(StudyRow row) =>
        new(row.Id, row.Revision, FromJson(row.StudyJson), row.DraftsJson, row.Updated, row.Archived);

    private static StudyHeadlineFigures? Figures(string? json) =>
        json is null ? null : JsonSerializer.Deserialize<StudyHeadlineFigures>(json, RetrofitJson.Options);
}
