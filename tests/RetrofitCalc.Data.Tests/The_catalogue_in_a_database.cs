using RetrofitCalc.Data.Seed;
using RetrofitCalc.Data.Tests.Databases;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Data.Tests;

/// <summary>What every database must do with catalogue rows; run on SQLite and on a PostgreSQL server.</summary>
public abstract class The_catalogue_in_a_database(TestDatabase db) : IAsyncLifetime
{
    public async ValueTask InitializeAsync()
    {
        await db.InitializeAsync();
        await db.Catalogue.ImportAsync(SampleRows.Family());
    }

    public async ValueTask DisposeAsync()
    {
        await db.DisposeAsync();
        GC.SuppressFinalize(this);
    }

    [Fact]
    public async Task holds_every_shipped_row_as_it_ships()
    {
        var stored = (await db.Catalogue.AllAsync()).All.ToDictionary(e => e.Id, CatalogueJson.Write);
        Assert.All(Shipped.Catalogue().All, e => Assert.Equal(CatalogueJson.Write(e), stored[e.Id]));
    }

    [Fact]
    public async Task imports_all_rows_or_none()
    {
        CatalogueEntry[] clash = [SampleRows.Lamp("fine"), SampleRows.Ballast("t-tube")];
        await Assert.ThrowsAsync<ArgumentException>(() => db.Catalogue.ImportAsync(clash));
        Assert.Null(await db.Catalogue.FindAsync("fine"));
        await Assert.ThrowsAsync<ArgumentException>(() => db.Catalogue.ImportAsync([SampleRows.Lamp("twice"), SampleRows.Lamp("twice")]));
        Assert.Null(await db.Catalogue.FindAsync("twice"));
    }

    [Fact]
    public async Task tells_the_second_writer_of_an_entry()
    {
        Assert.Equal(new EntryOutcome.Saved(2), await db.Catalogue.SaveEntryAsync(SampleRows.Lamp("t-lamp") with { Name = "One" }, 1));
        var second = await db.Catalogue.SaveEntryAsync(SampleRows.Lamp("t-lamp") with { Name = "Two" }, 1);
        Assert.Equal("One", Assert.IsType<EntryOutcome.Conflict>(second).Current.Entry.Name);
        Assert.IsType<EntryOutcome.Conflict>(await db.Catalogue.SaveEntryAsync(SampleRows.Lamp("t-lamp"), 0));
        Assert.IsType<EntryOutcome.Missing>(await db.Catalogue.SaveEntryAsync(SampleRows.Lamp("nobody"), 3));
    }

    [Fact]
    public async Task lets_one_of_two_people_add_the_same_id()
    {
        var outcomes = await Task.WhenAll(Enumerable.Range(1, 6).Select(n =>
            Task.Run(() => db.Catalogue.SaveEntryAsync(SampleRows.Lamp("rush") with { Name = $"Writer {n}" }, 0))));
        Assert.Single(outcomes, o => o is EntryOutcome.Saved);
        Assert.Equal(5, outcomes.Count(o => o is EntryOutcome.Conflict));
    }

    [Fact]
    public async Task keeps_the_values_of_every_edit()
    {
        await db.Catalogue.SaveEntryAsync(SampleRows.Tube("t-tube") with { LinePower = Power.FromWatts(18) }, 1);
        await db.Catalogue.RetireAsync("t-tube");
        await db.Catalogue.RestoreAsync("t-tube");
        var history = await db.Catalogue.HistoryAsync("t-tube");
        Assert.Equal(
            [(4, CatalogueChange.Restored), (3, CatalogueChange.Retired), (2, CatalogueChange.Edited), (1, CatalogueChange.Added)],
            history.Select(h => (h.Version, h.Change)));
        Assert.Equal(15, ((DirectWireTube)CatalogueJson.Read(CatalogueKind.Tube, history[^1].Json)).LinePower.Watts);
    }

    [Theory]
    [InlineData("t-setup", "Uses rows")]
    [InlineData("t-tube", "Uses rows")]
    [InlineData("t-lamp", "Test set-up")]
    public async Task only_retires_what_something_uses(string id, string user)
    {
        var study = await db.Catalogue.ResolveAsync(SampleStudy.WithLine("t-setup", new DirectWire("t-tube")));
        await db.Studies.AddAsync(study);
        var outcome = await db.Catalogue.DeleteAsync(id);
        Assert.False(outcome.Deleted);
        Assert.Contains(user, outcome.UsedBy);
        Assert.IsType<EntryOutcome.Saved>(await db.Catalogue.RetireAsync(id));
        Assert.True((await db.Catalogue.FindAsync(id))!.Entry.Retired);
    }

    [Fact]
    public async Task deletes_an_own_entry_nothing_uses_and_no_shipped_one()
    {
        Assert.True((await db.Catalogue.DeleteAsync("t-tube")).Deleted);
        Assert.Null(await db.Catalogue.FindAsync("t-tube"));
        var shipped = await db.Catalogue.DeleteAsync(Shipped.Catalogue().Tubes[0].Id);
        Assert.Equal((false, true), (shipped.Deleted, shipped.Shipped));
    }

    [Fact]
    public async Task copies_a_shipped_entry_into_an_own_one()
    {
        var original = Shipped.Catalogue().Tubes[0];
        var copy = await db.Catalogue.CopyAsync(original.Id, "my-tube", "My tube");
        Assert.True(copy!.Own);
        Assert.Equal(original.LinePower, ((DirectWireTube)copy.Entry).LinePower);
        Assert.False((await db.Catalogue.FindAsync(original.Id))!.Own);
    }

    [Fact]
    public async Task gives_a_study_every_row_it_names_and_no_other()
    {
        var study = await db.Catalogue.ResolveAsync(SampleStudy.WithLine("t-setup", new DirectWire("t-tube")));
        Assert.Equal(["t-ballast", "t-lamp", "t-setup", "t-tube"], study.Catalogue.All.Select(e => e.Id).Order());
    }

    [Fact]
    public async Task changes_no_study_behind_its_back()
    {
        var study = await db.Catalogue.ResolveAsync(SampleStudy.WithLine("t-setup", new DirectWire("t-tube")));
        await db.Catalogue.SaveEntryAsync(SampleRows.Tube("t-tube") with { LinePower = Power.FromWatts(99) }, 1);
        Assert.Equal(15, (await db.Catalogue.ResolveAsync(study)).Catalogue.Tubes[0].LinePower.Watts);
        Assert.Equal(99, (await db.Catalogue.RefreshAsync(study)).Catalogue.Tubes[0].LinePower.Watts);
    }

    [Fact]
    public async Task is_not_seeded_twice_and_keeps_edits_when_the_program_starts_again()
    {
        var shipped = Shipped.Catalogue().Tubes[0];
        await db.Catalogue.SaveEntryAsync(shipped with { Name = "Our name" }, 1);
        var before = (await db.Catalogue.AllAsync()).All.Count();
        Assert.Null(await db.Start.PrepareAsync());
        Assert.Equal(before, (await db.Catalogue.AllAsync()).All.Count());
        Assert.Equal("Our name", (await db.Catalogue.FindAsync(shipped.Id))!.Entry.Name);
        Assert.Equal(2, (await db.Catalogue.FindAsync(shipped.Id))!.Version);
    }
}

public sealed class The_catalogue_in_SQLite() : The_catalogue_in_a_database(new SqliteDatabase());

[Collection(PostgresCollection.Name)]
public sealed class The_catalogue_in_PostgreSQL(PostgresServer server) : The_catalogue_in_a_database(new PostgresDatabase(server));
