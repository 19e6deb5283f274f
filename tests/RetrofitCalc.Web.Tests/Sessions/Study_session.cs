using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Surveys;
using RetrofitCalc.Web.Features.Studies;
using RetrofitCalc.Web.Shared;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Sessions;

/// <summary>What one person's edits do to the study, its figures, the database, and the other person.</summary>
public sealed class Study_session(LocalData data) : IClassFixture<LocalData>
{
    private static Func<Study, Study> Rename(string name) => study => study with { Name = name };

    private async Task<Guid> NewStudyAsync() => (await data.Studies.AddAsync(EmptyStudy.Named("Glasshouse"))).Id;

    private async Task<StudySession> OpenAsync(Guid id)
    {
        var session = data.Session();
        Assert.True(await session.OpenAsync(id));
        await session.ReadyAsync;
        return session;
    }

    [Fact]
    public async Task saves_each_edit_as_it_is_made()
    {
        var id = await NewStudyAsync();
        var session = await OpenAsync(id);
        await session.EditAsync("name", Rename("North house"));
        Assert.IsType<SaveState.Saved>(session.Saved);
        Assert.Equal("North house", (await data.Studies.FindAsync(id))!.Study.Name);
    }

    [Fact]
    public async Task undoes_and_redoes_by_name_and_saves_that_too()
    {
        var id = await NewStudyAsync();
        var session = await OpenAsync(id);
        await session.EditAsync("name of the study", Rename("North house"));
        Assert.Equal("name of the study", session.CanUndo);
        await session.UndoAsync();
        Assert.Equal("Glasshouse", (await data.Studies.FindAsync(id))!.Study.Name);
        Assert.Equal("name of the study", session.CanRedo);
        await session.RedoAsync();
        Assert.Equal("North house", (await data.Studies.FindAsync(id))!.Study.Name);
        Assert.Null(session.CanRedo);
    }

    [Fact]
    public async Task keeps_an_edit_while_the_database_is_away_says_so_and_saves_it_once_it_is_back()
    {
        await using var own = new LocalData();
        await own.InitializeAsync();
        var id = (await own.Studies.AddAsync(EmptyStudy.Named("Glasshouse"))).Id;
        var session = own.Session();
        Assert.True(await session.OpenAsync(id));
        await session.ReadyAsync;
        own.TakeAway();
        await session.EditAsync("name", Rename("North house"));
        Assert.IsType<SaveState.Failed>(session.Saved);
        Assert.Equal("North house", session.Study.Name);
        own.PutBack();
        await session.RetrySaveAsync();
        Assert.IsType<SaveState.Saved>(session.Saved);
        Assert.Equal("North house", (await own.Studies.FindAsync(id))!.Study.Name);
    }

    [Fact]
    public async Task builds_two_quick_edits_on_each_other()
    {
        var id = await NewStudyAsync();
        var session = await OpenAsync(id);
        var one = session.EditAsync("name", Rename("North house"));
        var two = session.EditAsync("zone", study => study with { Site = study.Site with { TimeZone = "Europe/Oslo" } });
        await Task.WhenAll(one, two);
        var stored = (await data.Studies.FindAsync(id))!.Study;
        Assert.Equal(("North house", "Europe/Oslo"), (stored.Name, stored.Site.TimeZone));
    }

    [Fact]
    public async Task keeps_a_text_that_could_not_be_read_through_closing_and_opening()
    {
        var id = await NewStudyAsync();
        var session = await OpenAsync(id);
        var draft = new CellDraft("line-1", "Count", "1O", "has a letter O where a digit belongs");
        await session.EditAsync("count of line 1", state => state with { Drafts = [draft] });
        Assert.Equal([draft], (await OpenAsync(id)).State.Drafts);
    }

    [Fact]
    public async Task tells_the_second_writer_and_loses_neither_version()
    {
        var id = await NewStudyAsync();
        var (first, second) = (await OpenAsync(id), await OpenAsync(id));
        await first.EditAsync("name", Rename("Mine"));
        await second.EditAsync("name", Rename("Theirs"));
        Assert.IsType<SaveState.Conflict>(second.Saved);
        Assert.Equal("Theirs", second.Study.Name);
        Assert.Equal("Mine", (await data.Studies.FindAsync(id))!.Study.Name);

        var copy = await second.KeepMineAsCopyAsync();
        Assert.Equal("Theirs (copy after a conflict)", (await data.Studies.FindAsync(copy))!.Study.Name);
        Assert.Equal("Mine", second.Study.Name);
        await second.EditAsync("name", Rename("Mine, once more"));
        Assert.IsType<SaveState.Saved>(second.Saved);
    }

    [Fact]
    public async Task keeps_the_last_good_figures_marked_stale_while_the_study_cannot_be_evaluated()
    {
        var session = await OpenAsync(await NewStudyAsync());
        Assert.False(session.Stale);
        await session.EditAsync("study years", study => study with { Assumptions = study.Assumptions with { StudyYears = 0 } });
        Assert.True(session.Stale);
        Assert.NotNull(session.Result);
        Assert.Contains(session.Problems, p => p.Path.Contains("StudyYears", StringComparison.Ordinal));
    }

    [Fact]
    public async Task says_that_there_is_no_such_study() => Assert.False(await data.Session().OpenAsync(Guid.NewGuid()));
}
