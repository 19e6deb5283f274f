using Microsoft.EntityFrameworkCore;
using NodaTime;
using RetrofitCalc.Data.Model;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Data;

/// <summary>Earlier states of studies: kept ones to go back to, and issued ones that never change.</summary>
public sealed class StudyHistory(IDbContextFactory<RetrofitContext> contexts, IClock clock)
{
    /// <summary>Autosave writes every few seconds; one state in this time is enough to go back to.</summary>
    private static readonly Duration KeepEvery = Duration.FromMinutes(10);

    private const int KeepAtMost = 50;

    /// <summary>Newest first.</summary>
    public async Task<IReadOnlyList<StudyRevision>> RevisionsAsync(Guid studyId, CancellationToken stop = default)
    {
        await using var db = await contexts.CreateDbContextAsync(stop);
        return await db.StudyRevisions.AsNoTracking().Where(r => r.StudyId == studyId)
            .OrderByDescending(r => r.At).ThenByDescending(r => r.Revision)
            .Select(r => new StudyRevision(r.Id, r.StudyId, r.Revision, r.Kind, r.Note, r.At))
            .ToListAsync(stop);
    }

    /// <summary>The study as it was; null when there is no such revision.</summary>
    public async Task<Study?> FindAsync(Guid revisionId, CancellationToken stop = default)
    {
        await using var db = await contexts.CreateDbContextAsync(stop);
        var json = await db.StudyRevisions.Where(r => r.Id == revisionId).Select(r => r.StudyJson).SingleOrDefaultAsync(stop);
        return json is null ? null : StudyStore.FromJson(json);
    }

    /// <summary>Freezes the study as saved; null when someone saved since <paramref name="expectedRevision"/> or deleted it.</summary>
    public async Task<StudyRevision?> IssueAsync(Guid studyId, int expectedRevision, string note, CancellationToken stop = default)
    {
        await using var db = await contexts.CreateDbContextAsync(stop);
        var study = await db.Studies.AsNoTracking().SingleOrDefaultAsync(s => s.Id == studyId && s.Revision == expectedRevision, stop);
        if (study is null) return null;
        var frozen = Row(study, RevisionKind.Issued, PlainText.Storable(note), clock.GetCurrentInstant());
        db.Add(frozen);
        await db.SaveChangesAsync(stop);
        return new StudyRevision(frozen.Id, studyId, frozen.Revision, frozen.Kind, frozen.Note, frozen.At);
    }

    /// <summary>Keeps the state a save is about to replace, unless one was kept a short while ago, and drops the oldest beyond the limit.</summary>
    internal static async Task KeepAsync(RetrofitContext db, StudyRow row, Instant now, CancellationToken stop)
    {
        var kept = await db.StudyRevisions.Where(r => r.StudyId == row.Id && r.Kind == RevisionKind.Kept)
            .OrderByDescending(r => r.At).Select(r => new { r.Id, r.At }).ToListAsync(stop);
        if (kept.Count > 0 && now - kept[0].At < KeepEvery) return;
        db.Add(Row(row, RevisionKind.Kept, "", now));
        var tooOld = kept.Skip(KeepAtMost - 1).Select(k => k.Id).ToList();
        if (tooOld.Count > 0) db.RemoveRange(await db.StudyRevisions.Where(r => tooOld.Contains(r.Id)).ToListAsync(stop));
    }

    private static StudyRevisionRow Row(StudyRow study, RevisionKind kind, string note, Instant now) => new()
    {
        Id = Guid.CreateVersion7(),
        StudyId = study.Id,
        Revision = study.Revision,
        Kind = kind,
        Note = note,
        StudyJson = study.StudyJson,
        At = now,
    };
}
