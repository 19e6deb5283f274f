using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using NodaTime;
using RetrofitCalc.Data.Tests.Databases;

namespace RetrofitCalc.Data.Tests;

/// <summary>Whatever is wrong with the file, the program says so once and leaves the file as it was.</summary>
public sealed class Starting_on_a_SQLite_file : IAsyncLifetime
{
    private readonly SqliteDatabase _db = new();

    public ValueTask InitializeAsync() => ValueTask.CompletedTask;

    public ValueTask DisposeAsync() => _db.DisposeAsync();

    [Fact]
    public async Task creates_the_folder_and_a_file_in_write_ahead_mode()
    {
        await _db.InitializeAsync();
        Assert.Equal("wal", Scalar("PRAGMA journal_mode"));
    }

    [Fact]
    public async Task works_for_two_instances_at_the_same_moment()
    {
        var instances = Enumerable.Range(0, 4).Select(_ => _db.NewInstance()).ToList();
        var problems = await Task.WhenAll(instances.Select(i => Task.Run(() => i.GetRequiredService<DatabaseStart>().PrepareAsync())));
        Assert.All(problems, Assert.Null);
        Assert.Equal(0L, Scalar("SELECT count(*) FROM (SELECT EntryId FROM CatalogueHistory GROUP BY EntryId HAVING count(*) > 1)"));
        foreach (var instance in instances) await instance.DisposeAsync();
    }

    [Fact]
    public async Task goes_on_after_a_start_that_was_killed_while_it_migrated()
    {
        await _db.InitializeAsync();
        // The row a killed migration leaves behind; the framework alone would wait for it for ever.
        Scalar("CREATE TABLE IF NOT EXISTS __EFMigrationsLock (Id INTEGER PRIMARY KEY, Timestamp TEXT NOT NULL)");
        Scalar("INSERT OR REPLACE INTO __EFMigrationsLock VALUES (1, '2026-01-01')");
        Assert.Null(await _db.Start.PrepareAsync().WaitAsync(TimeSpan.FromSeconds(20)));
    }

    [Fact]
    public async Task goes_on_after_a_start_that_was_killed_before_it_made_its_first_table()
    {
        Directory.CreateDirectory(Path.GetDirectoryName(_db.FilePath)!);
        Scalar("CREATE TABLE __EFMigrationsLock (Id INTEGER NOT NULL PRIMARY KEY, Timestamp TEXT NOT NULL)");
        await using var instance = _db.NewInstance();
        Assert.Null(await instance.GetRequiredService<DatabaseStart>().PrepareAsync().WaitAsync(TimeSpan.FromSeconds(20)));
    }

    [Fact]
    public async Task refuses_a_damaged_file_and_leaves_it_as_it_is()
    {
        Directory.CreateDirectory(Path.GetDirectoryName(_db.FilePath)!);
        var damaged = Enumerable.Range(0, 8192).Select(i => (byte)(i * 31)).ToArray();
        await File.WriteAllBytesAsync(_db.FilePath, damaged);
        Assert.Contains("damaged", (await ProblemAsync()).What);
        Assert.Equal(damaged, await File.ReadAllBytesAsync(_db.FilePath));
    }

    [Fact]
    public async Task refuses_a_file_with_a_torn_page()
    {
        await _db.InitializeAsync();
        Scalar("PRAGMA wal_checkpoint(TRUNCATE)");
        await _db.RestartAsync();
        var bytes = await File.ReadAllBytesAsync(_db.FilePath);
        Array.Fill(bytes, (byte)0xA5, 4096, bytes.Length - 8192);
        await File.WriteAllBytesAsync(_db.FilePath, bytes);
        Assert.Contains("damaged", (await ProblemAsync()).What);
        Assert.Equal(bytes, await File.ReadAllBytesAsync(_db.FilePath));
    }

    [Fact]
    public async Task refuses_another_programs_database()
    {
        Directory.CreateDirectory(Path.GetDirectoryName(_db.FilePath)!);
        Scalar("CREATE TABLE theirs (x)");
        await _db.RestartAsync();
        Assert.Contains("another program", (await ProblemAsync()).What);
        Assert.Equal(1L, Scalar("SELECT count(*) FROM sqlite_master"));
    }

    [Fact]
    public async Task refuses_a_database_of_a_newer_version()
    {
        await _db.InitializeAsync();
        Scalar("INSERT INTO __EFMigrationsHistory VALUES ('29990101000000_Future', '99.0.0')");
        var problem = await ProblemAsync();
        Assert.Contains("29990101000000_Future", problem.What);
        Assert.Contains("Nothing in it was changed", problem.Safe);
    }

    [Fact]
    public async Task says_when_the_file_stays_locked()
    {
        await _db.InitializeAsync();
        await _db.RestartAsync(); // lets go of the pooled connections
        await using var holder = Connect();
        Run(holder, "PRAGMA locking_mode=EXCLUSIVE");
        Run(holder, "BEGIN EXCLUSIVE");
        Assert.Contains("locked", (await ProblemAsync()).What);
        Run(holder, "ROLLBACK");
    }

    [Fact]
    public async Task says_when_the_path_cannot_be_opened()
    {
        Directory.CreateDirectory(_db.FilePath);
        Assert.Contains("cannot be opened", (await ProblemAsync()).What);
    }

    [Fact]
    public async Task says_when_the_folder_cannot_be_made()
    {
        await File.WriteAllTextAsync(Path.GetDirectoryName(_db.FilePath)!, "A file stands where the folder should be.");
        Assert.Contains("cannot be opened", (await ProblemAsync()).What);
    }

    [Fact]
    public async Task explains_a_file_that_may_only_be_read()
    {
        await _db.InitializeAsync();
        await using var reader = Connect("Mode=ReadOnly;Pooling=False");
        var error = Assert.Throws<SqliteException>(() => Run(reader, "DELETE FROM Settings"));
        Assert.Contains("cannot be written", DatabaseStart.Explain(new DbUpdateException("", error))!.What);
    }

    [Fact]
    public void leaves_errors_of_others_alone() => Assert.Null(DatabaseStart.Explain(new ArgumentException("not ours")));

    private async Task<DatabaseProblem> ProblemAsync()
    {
        await using var instance = TestDatabase.Build(
            new Dictionary<string, string?> { ["Data:Path"] = _db.FilePath, ["Data:BusySeconds"] = "1" }, SystemClock.Instance);
        return (await instance.GetRequiredService<DatabaseStart>().PrepareAsync())!;
    }

    private object? Scalar(string sql)
    {
        using var connection = Connect();
        return Run(connection, sql);
    }

    private SqliteConnection Connect(string more = "Pooling=False")
    {
        var connection = new SqliteConnection($"Data Source={_db.FilePath};{more}");
        connection.Open();
        return connection;
    }

    private static object? Run(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        return command.ExecuteScalar();
    }
}
