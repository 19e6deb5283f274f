using RetrofitCalc.Data.Seed;
using RetrofitCalc.Data.Tests.Databases;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Data.Tests;

/// <summary>What every database must do with tariffs; run on SQLite and on a PostgreSQL server.</summary>
public abstract class The_tariff_library(TestDatabase db) : IAsyncLifetime
{
    private static readonly Tariff Ten = Tariff.Flat(EnergyPrice.FromPerKilowattHour(0.10)) with { Name = "Our \u0000 flat price ✓" };

    public ValueTask InitializeAsync() => db.InitializeAsync();

    public async ValueTask DisposeAsync()
    {
        await db.DisposeAsync();
        GC.SuppressFinalize(this);
    }

    [Fact]
    public async Task holds_every_shipped_tariff_as_it_ships()
    {
        var stored = (await db.Tariffs.ListAsync()).ToDictionary(t => t.Id);
        Assert.All(Shipped.Tariffs(), t =>
        {
            Assert.Equal(TariffJson.Write(t.Tariff), TariffJson.Write(stored[t.Id].Tariff));
            Assert.Equal((t.Note, 1, false, false), (stored[t.Id].Note, stored[t.Id].Version, stored[t.Id].Own, stored[t.Id].Retired));
        });
    }

    [Fact]
    public async Task keeps_the_tariff_of_a_study_as_it_is()
    {
        var added = await db.Tariffs.AddAsync(Ten, "From the bill of May");
        var found = (await db.Tariffs.FindAsync(added.Id))!;
        Assert.Equal(TariffJson.Write(Ten), TariffJson.Write(found.Tariff));
        Assert.Equal(("From the bill of May", 1, true), (found.Note, found.Version, found.Own));
        Assert.Null(await db.Tariffs.FindAsync("nobody"));
    }

    [Fact]
    public async Task makes_a_new_version_and_keeps_the_one_before()
    {
        var added = await db.Tariffs.AddAsync(Ten);
        Assert.Equal(new TariffOutcome.Saved(2), await db.Tariffs.SaveAsync(added with { Tariff = Ten with { Name = "Dearer", Energy = Tariff.Flat(EnergyPrice.FromPerKilowattHour(0.12)).Energy } }));
        var history = await db.Tariffs.HistoryAsync(added.Id);
        Assert.Equal([(2, CatalogueChange.Edited, 0.12), (1, CatalogueChange.Added, 0.10)], history.Select(h => (h.Version, h.Change, h.Tariff.Energy[0].Blocks[0].Price.PerKilowattHour)));
        Assert.Equal("Dearer", (await db.Tariffs.FindAsync(added.Id))!.Tariff.Name);
    }

    [Fact]
    public async Task tells_the_second_writer()
    {
        var read = await db.Tariffs.AddAsync(Ten);
        await db.Tariffs.SaveAsync(read with { Tariff = Ten with { Name = "One" } });
        var second = await db.Tariffs.SaveAsync(read with { Tariff = Ten with { Name = "Two" } });
        Assert.Equal("One", Assert.IsType<TariffOutcome.Conflict>(second).Current.Tariff.Name);
        Assert.IsType<TariffOutcome.Missing>(await db.Tariffs.SaveAsync(read with { Id = "nobody" }));
        Assert.IsType<TariffOutcome.Missing>(await db.Tariffs.RetireAsync("nobody"));
    }

    [Fact]
    public async Task lets_one_of_several_writers_win()
    {
        var read = await db.Tariffs.AddAsync(Ten);
        var outcomes = await Task.WhenAll(Enumerable.Range(1, 6).Select(n => Task.Run(() => db.Tariffs.SaveAsync(read with { Tariff = Ten with { Name = $"Writer {n}" } }))));
        Assert.Single(outcomes, o => o is TariffOutcome.Saved);
        Assert.Equal(5, outcomes.Count(o => o is TariffOutcome.Conflict));
        Assert.Equal(2, (await db.Tariffs.HistoryAsync(read.Id)).Count);
    }

    [Fact]
    public async Task retires_and_never_deletes()
    {
        var added = await db.Tariffs.AddAsync(Ten);
        Assert.Equal(new TariffOutcome.Saved(2), await db.Tariffs.RetireAsync(added.Id));
        Assert.DoesNotContain(await db.Tariffs.ListAsync(), t => t.Id == added.Id);
        Assert.True((await db.Tariffs.ListAsync(retiredToo: true)).Single(t => t.Id == added.Id).Retired);
        Assert.Equal(new TariffOutcome.Saved(3), await db.Tariffs.RestoreAsync(added.Id));
        Assert.Contains(await db.Tariffs.ListAsync(), t => t.Id == added.Id);
        Assert.Equal([CatalogueChange.Restored, CatalogueChange.Retired, CatalogueChange.Added], (await db.Tariffs.HistoryAsync(added.Id)).Select(h => h.Change));
    }

    [Fact]
    public async Task is_not_seeded_twice_and_keeps_edits_when_the_program_starts_again()
    {
        var shipped = (await db.Tariffs.ListAsync()).First(t => !t.Own);
        await db.Tariffs.SaveAsync(shipped with { Tariff = shipped.Tariff with { Name = "Ours now" } });
        var retired = (await db.Tariffs.ListAsync()).First(t => !t.Own);
        await db.Tariffs.RetireAsync(retired.Id);
        var before = (await db.Tariffs.ListAsync(retiredToo: true)).Count;
        Assert.Null(await db.Start.PrepareAsync());
        Assert.Equal(before, (await db.Tariffs.ListAsync(retiredToo: true)).Count);
        Assert.Equal(("Ours now", 2, true), ((await db.Tariffs.FindAsync(shipped.Id))!.Tariff.Name, (await db.Tariffs.FindAsync(shipped.Id))!.Version, (await db.Tariffs.FindAsync(shipped.Id))!.Own));
        Assert.True((await db.Tariffs.FindAsync(retired.Id))!.Retired);
    }
}

public sealed class The_tariff_library_in_SQLite() : The_tariff_library(new SqliteDatabase());

[Collection(PostgresCollection.Name)]
public sealed class The_tariff_library_in_PostgreSQL(PostgresServer server) : The_tariff_library(new PostgresDatabase(server));
