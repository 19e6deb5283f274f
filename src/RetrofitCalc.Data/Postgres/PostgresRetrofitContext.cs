using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Storage;
using Npgsql;

namespace RetrofitCalc.Data.Postgres;

/// <summary>A server that several people share.</summary>
public sealed class PostgresRetrofitContext(DbContextOptions<PostgresRetrofitContext> options) : RetrofitContext(options)
{
    private const long StartLock = 7_204_310_001;

    /// <summary>Holds an advisory lock of the session: the server frees it when the connection ends, however it ends.</summary>
    public override async Task<IAsyncDisposable> ClaimAsync(CancellationToken stop)
    {
        await CreateIfMissingAsync(stop);
        await Database.OpenConnectionAsync(stop);
        await Database.ExecuteSqlAsync($"SELECT pg_advisory_lock({StartLock})", stop);
        return new AdvisoryLock(this);
    }

    public override Task<DatabaseProblem?> InspectAsync(CancellationToken stop)
    {
        try
        {
            _ = Database.GetDbConnection();
            return Task.FromResult<DatabaseProblem?>(null);
        }
        catch (ArgumentException unreadable)
        {
            return Task.FromResult<DatabaseProblem?>(PostgresProblems.NotUnderstood(unreadable.Message));
        }
    }

    private async Task CreateIfMissingAsync(CancellationToken stop)
    {
        var creator = this.GetService<IRelationalDatabaseCreator>();
        if (await creator.ExistsAsync(stop)) return;
        try
        {
            await creator.CreateAsync(stop);
        }
        catch (PostgresException other) when (other.SqlState is PostgresErrorCodes.DuplicateDatabase or PostgresErrorCodes.UniqueViolation)
        {
            // Another start made it in the meantime.
        }
    }

    private sealed class AdvisoryLock(PostgresRetrofitContext context) : IAsyncDisposable
    {
        public async ValueTask DisposeAsync()
        {
            await context.Database.ExecuteSqlAsync($"SELECT pg_advisory_unlock({StartLock})");
            await context.Database.CloseConnectionAsync();
        }
    }
}

/// <summary>Used when a migration is added; it opens no connection.</summary>
internal sealed class PostgresDesignFactory : IDesignTimeDbContextFactory<PostgresRetrofitContext>
{
    public PostgresRetrofitContext CreateDbContext(string[] args) =>
        new(new DbContextOptionsBuilder<PostgresRetrofitContext>().UseNpgsql("Host=localhost").Options);
}
