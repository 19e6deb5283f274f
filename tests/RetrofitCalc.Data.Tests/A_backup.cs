using RetrofitCalc.Data.Tests.Databases;

namespace RetrofitCalc.Data.Tests;

/// <summary>The administrator's scripts, run on both databases.</summary>
public abstract class A_backup(TestDatabase db) : IAsyncLifetime
{
    private readonly string _folder = Directory.CreateTempSubdirectory("retrofit-backup-").FullName;

    public ValueTask InitializeAsync() => db.InitializeAsync();

    public async ValueTask DisposeAsync()
    {
        await db.DisposeAsync();
        Directory.Delete(_folder, recursive: true);
        GC.SuppressFinalize(this);
    }

    [Fact]
    public async Task taken_while_the_program_runs_brings_everything_back()
    {
        var study = await db.Studies.AddAsync(SampleStudy.Named("Worth keeping ✓"));
        var (code, backup) = await DeployScript.RunAsync("backup.sh", db.Address.Kind, db.Address.Place, _folder);
        Assert.True(code == 0, backup);
        await db.Studies.DeleteAsync(study.Id);
        await db.RestartAsync();
        var (restored, said) = await DeployScript.RunAsync("restore.sh", db.Address.Kind, backup, db.Address.Place);
        Assert.True(restored == 0, said);
        Assert.Null(await db.Start.PrepareAsync());
        Assert.Equal("Worth keeping ✓", (await db.Studies.FindAsync(study.Id))!.Study.Name);
    }

    [Fact]
    public async Task that_is_damaged_is_refused_and_changes_nothing()
    {
        var study = await db.Studies.AddAsync(SampleStudy.Named("Still here"));
        var torn = Path.Combine(_folder, "torn");
        await File.WriteAllBytesAsync(torn, Enumerable.Range(0, 5000).Select(i => (byte)(i * 7)).ToArray());
        var (code, _) = await DeployScript.RunAsync("restore.sh", db.Address.Kind, torn, db.Address.Place);
        Assert.NotEqual(0, code);
        Assert.NotNull(await db.Studies.FindAsync(study.Id));
    }
}

public sealed class A_backup_of_SQLite() : A_backup(new SqliteDatabase());

[Collection(PostgresCollection.Name)]
public sealed class A_backup_of_PostgreSQL(PostgresServer server) : A_backup(new PostgresDatabase(server));
