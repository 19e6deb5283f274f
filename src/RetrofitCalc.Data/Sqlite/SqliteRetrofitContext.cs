using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;

namespace RetrofitCalc.Data.Sqlite;

/// <summary>One file on the user's own computer.</summary>
public sealed class SqliteRetrofitContext(DbContextOptions<SqliteRetrofitContext> options) : RetrofitContext(options)
{
    /// <summary>Locks a file beside the database: unlike EF's lock row, the operating system frees it when a process dies.</summary>
    public override async Task<IAsyncDisposable> ClaimAsync(CancellationToken stop)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(FilePath)!);
        var claim = await FileClaim.TakeAsync(FilePath + "-starting", stop);
        try
        {
            await ExecuteAsync("PRAGMA journal_mode=WAL", stop);
            // A lock row left by a process that was killed while it migrated would stop every later start.
            if (await CountAsync("SELECT count(*) FROM sqlite_master WHERE name='__EFMigrationsLock'", stop) > 0)
                await ExecuteAsync("DELETE FROM __EFMigrationsLock", stop);
            return claim;
        }
        catch
        {
            await claim.DisposeAsync();
            throw;
        }
    }

    public override async Task<DatabaseProblem?> InspectAsync(CancellationToken stop)
    {
        if (!File.Exists(FilePath) || new FileInfo(FilePath).Length == 0) return null;
        await Database.OpenConnectionAsync(stop);
        try
        {
            if (await ScalarAsync("PRAGMA quick_check(1)", stop) is not "ok") return SqliteProblems.Damaged(FilePath);
            // The lock table comes first: a start that was killed right then, or still runs, has made nothing else yet.
            var foreign = await CountAsync("SELECT count(*) FROM sqlite_master WHERE type='table' AND name<>'__EFMigrationsLock'", stop) > 0
                && await CountAsync("SELECT count(*) FROM sqlite_master WHERE name='__EFMigrationsHistory'", stop) == 0;
            return foreign ? SqliteProblems.NotOurs(FilePath) : null;
        }
        finally
        {
            await Database.CloseConnectionAsync();
        }
    }

    private string FilePath => new SqliteConnectionStringBuilder(Database.GetConnectionString()).DataSource;

    private async Task<long> CountAsync(string sql, CancellationToken stop) => (long)(await ScalarAsync(sql, stop))!;

    private Task ExecuteAsync(string sql, CancellationToken stop) => ScalarAsync(sql, stop);

    private async Task<object?> ScalarAsync(string sql, CancellationToken stop)
    {
        await Database.OpenConnectionAsync(stop);
        try
        {
            await using var command = Database.GetDbConnection().CreateCommand();
            command.CommandText = sql;
            return await command.ExecuteScalarAsync(stop);
        }
        finally
        {
            await Database.CloseConnectionAsync();
        }
    }
}

/// <summary>Used when a migration is added; it opens no database.</summary>
internal sealed class SqliteDesignFactory : IDesignTimeDbContextFactory<SqliteRetrofitContext>
{
    public SqliteRetrofitContext CreateDbContext(string[] args) =>
        new(new DbContextOptionsBuilder<SqliteRetrofitContext>().UseSqlite("Data Source=design.db").Options);
}
