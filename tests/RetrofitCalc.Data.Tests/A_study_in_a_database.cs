using NodaTime;
using RetrofitCalc.Data.Tests.Databases;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Data.Tests;

/// <summary>What every database must do with studies; run on SQLite and on a PostgreSQL server.</summary>
public abstract class A_study_in_a_database(TestDatabase db) : IAsyncLifetime
{
    private const string AnyText = "Ünïcode ✓ 生产 🌱 \"quoted\" <script>alert('x')</script> & 'tick' %_\\ \u0000 end";
    private const string Drafts = """{"line-1":"1,5 lamps"}""";

    public ValueTask InitializeAsync() => db.InitializeAsync();

    public async ValueTask DisposeAsync()
    {
        await db.DisposeAsync();
        GC.SuppressFinalize(this);
    }

    [Fact]
    public async Task is_found_as_it_was_added()
    {
        var added = await db.Studies.AddAsync(SampleStudy.Named("First"));
        var found = await db.Studies.FindAsync(added.Id);
        Assert.Equal(1, found!.Revision);
        Assert.Equal(StudyStore.Json(SampleStudy.Named("First")), StudyStore.Json(found.Study));
        Assert.Equal(added.Updated, found.Updated);
    }

    [Fact]
    public async Task keeps_any_text_a_person_can_type()
    {
        var study = SampleStudy.Named(AnyText) with { Areas = [new Area { Id = "a", Name = AnyText }] };
        var added = await db.Studies.AddAsync(study);
        var found = await db.Studies.FindAsync(added.Id);
        Assert.Equal(AnyText, found!.Study.Name);
        Assert.Equal(AnyText, found.Study.Areas[0].Name);
        // The list has a column of its own, and PostgreSQL columns hold no zero character.
        Assert.Contains(await db.Studies.ListAsync(false), h => h.Id == added.Id && h.Name == AnyText.Replace("\0", ""));
    }

    [Fact]
    public async Task keeps_drafts_and_figures_of_each_save()
    {
        var added = await db.Studies.AddAsync(SampleStudy.Named("Draft"));
        var figures = new StudyHeadlineFigures(
            Power.FromWatts(7100), Power.FromWatts(4200), Money.FromUnits(5200.5), Money.FromUnits(3100), 3.25, 2);
        var outcome = await db.Studies.SaveAsync(new(added.Id, 1, added.Study, Drafts, figures));
        Assert.Equal(new SaveOutcome.Saved(2), outcome);
        Assert.Equal(Drafts, (await db.Studies.FindAsync(added.Id))!.DraftsJson);
        Assert.Equal(figures, (await db.Studies.ListAsync(false)).Single(h => h.Id == added.Id).Figures);
    }

    [Fact]
    public async Task takes_figures_later_only_while_they_are_of_the_same_revision()
    {
        var added = await db.Studies.AddAsync(SampleStudy.Named("Figures"));
        var figures = new StudyHeadlineFigures(Power.FromWatts(1), Power.FromWatts(1), Money.Zero, Money.Zero, null, 0);
        await db.Studies.SetHeadlineAsync(added.Id, 7, figures);
        Assert.Null((await db.Studies.ListAsync(false)).Single(h => h.Id == added.Id).Figures);
        await db.Studies.SetHeadlineAsync(added.Id, 1, figures);
        Assert.Equal(figures, (await db.Studies.ListAsync(false)).Single(h => h.Id == added.Id).Figures);
        Assert.Equal(1, (await db.Studies.FindAsync(added.Id))!.Revision);
    }

    [Fact]
    public async Task tells_the_second_writer_and_keeps_the_first_ones_work()
    {
        var added = await db.Studies.AddAsync(SampleStudy.Named("Shared"));
        await db.Studies.SaveAsync(new(added.Id, 1, SampleStudy.Named("First writer"), "{}", null));
        var second = await db.Studies.SaveAsync(new(added.Id, 1, SampleStudy.Named("Second writer"), "{}", null));
        var conflict = Assert.IsType<SaveOutcome.Conflict>(second);
        Assert.Equal("First writer", conflict.Current.Study.Name);
        Assert.Equal(2, conflict.Current.Revision);
        Assert.Equal("First writer", (await db.Studies.FindAsync(added.Id))!.Study.Name);
    }

    [Fact]
    public async Task lets_exactly_one_of_many_writers_at_the_same_moment_win()
    {
        var added = await db.Studies.AddAsync(SampleStudy.Named("Rush"));
        var writers = Enumerable.Range(1, 8).Select(n =>
            Task.Run(() => db.Studies.SaveAsync(new(added.Id, 1, SampleStudy.Named($"Writer {n}"), "{}", null))));
        var outcomes = await Task.WhenAll(writers);
        Assert.Single(outcomes, o => o is SaveOutcome.Saved);
        Assert.Equal(7, outcomes.Count(o => o is SaveOutcome.Conflict));
        Assert.Equal(2, (await db.Studies.FindAsync(added.Id))!.Revision);
    }

    [Fact]
    public async Task that_was_deleted_is_missing_for_a_late_writer()
    {
        var added = await db.Studies.AddAsync(SampleStudy.Named("Gone"));
        await db.Studies.SaveAsync(new(added.Id, 1, added.Study, "{}", null));
        Assert.True(await db.Studies.DeleteAsync(added.Id));
        Assert.False(await db.Studies.DeleteAsync(added.Id));
        Assert.IsType<SaveOutcome.Missing>(await db.Studies.SaveAsync(new(added.Id, 2, added.Study, "{}", null)));
        Assert.Empty(await db.History.RevisionsAsync(added.Id));
    }

    [Fact]
    public async Task is_listed_newest_first_and_apart_when_archived()
    {
        var first = await db.Studies.AddAsync(SampleStudy.Named("Older"));
        var second = await db.Studies.AddAsync(SampleStudy.Named("Newer"));
        Assert.Equal([second.Id, first.Id], (await db.Studies.ListAsync(false)).Select(h => h.Id).Take(2));
        await db.Studies.ArchiveAsync(second.Id);
        Assert.DoesNotContain(await db.Studies.ListAsync(false), h => h.Id == second.Id);
        Assert.Equal([second.Id], (await db.Studies.ListAsync(true)).Select(h => h.Id));
        await db.Studies.RestoreAsync(second.Id);
        Assert.Contains(await db.Studies.ListAsync(false), h => h.Id == second.Id);
    }

    [Fact]
    public async Task is_copied_with_its_content_and_without_its_history()
    {
        var added = await db.Studies.AddAsync(SampleStudy.Named("Original"));
        await db.History.IssueAsync(added.Id, 1, "Board");
        var copy = await db.Studies.CopyAsync(added.Id, "Copy");
        Assert.Equal("Copy", copy!.Study.Name);
        Assert.Equal(added.Study.Site, copy.Study.Site);
        Assert.Empty(await db.History.RevisionsAsync(copy.Id));
    }

    [Fact]
    public async Task that_was_issued_stays_as_it_was_handed_out()
    {
        var added = await db.Studies.AddAsync(SampleStudy.Named("As issued"));
        var issued = await db.History.IssueAsync(added.Id, 1, "Budget meeting");
        await db.Studies.SaveAsync(new(added.Id, 1, SampleStudy.Named("Later"), "{}", null));
        Assert.Equal("As issued", (await db.History.FindAsync(issued!.Id))!.Name);
        Assert.Contains(issued, await db.History.RevisionsAsync(added.Id));
        Assert.Null(await db.History.IssueAsync(added.Id, 1, "Stale"));
    }

    [Fact]
    public async Task keeps_one_earlier_state_in_ten_minutes_and_fifty_at_most()
    {
        var added = await db.Studies.AddAsync(SampleStudy.Named("0"));
        var issued = await db.History.IssueAsync(added.Id, 1, "Frozen");
        for (var n = 1; n <= 60; n++)
        {
            db.Clock.Advance(n <= 5 ? Duration.Zero : Duration.FromMinutes(11));
            await db.Studies.SaveAsync(new(added.Id, n, SampleStudy.Named($"{n}"), "{}", null));
        }
        var revisions = await db.History.RevisionsAsync(added.Id);
        var kept = revisions.Where(r => r.Kind == RevisionKind.Kept).Select(r => r.Revision).ToList();
        // Saves 6 to 60 each kept the state before them; the five quick ones kept only the first.
        Assert.Equal(Enumerable.Range(11, 50).Reverse(), kept);
        Assert.Contains(issued, revisions);
    }

    [Fact]
    public async Task survives_a_restart_between_two_edits()
    {
        var added = await db.Studies.AddAsync(SampleStudy.Named("Before"));
        await db.Studies.SaveAsync(new(added.Id, 1, SampleStudy.Named("Edit one"), Drafts, null));
        await db.RestartAsync();
        Assert.Equal("Edit one", (await db.Studies.FindAsync(added.Id))!.Study.Name);
        Assert.Equal(new SaveOutcome.Saved(3), await db.Studies.SaveAsync(new(added.Id, 2, SampleStudy.Named("Edit two"), "{}", null)));
    }

    [Fact]
    public async Task belongs_to_a_workspace_with_preferences()
    {
        await db.Settings.WriteAsync(new WorkspaceSettings("si", "de-DE"));
        Assert.Equal(new WorkspaceSettings("si", "de-DE"), await db.Settings.ReadAsync());
        await db.Settings.WriteAsync(new WorkspaceSettings("us", null));
        Assert.Equal(new WorkspaceSettings("us", null), await db.Settings.ReadAsync());
    }
}

public sealed class A_study_in_SQLite() : A_study_in_a_database(new SqliteDatabase());

[Collection(PostgresCollection.Name)]
public sealed class A_study_in_PostgreSQL(PostgresServer server) : A_study_in_a_database(new PostgresDatabase(server));
