using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Storage;

namespace RetrofitCalc.Data.Postgres;

/// <summary>A server that several people share.</summary>
public sealed class PostgresRetrofitContext(DbContextOptions<PostgresRetrofitContext> options) : RetrofitContext(options)
{
    private const long StartLock = 7_204_310_001;

    /// <summary>Holds an advisory lock of the session: the server frees it when the connection ends, however it ends.</summary>
    public override async Task<IAsyncDisposable> ClaimAsync(CancellationToken stop)
    {
        var creator = this.GetService<IRelationalDatabaseCreator>();
        if (!await creator.ExistsAsync(stop)) await creator.CreateAsync(stop);
        await Database.OpenConnectionAsync(stop);
        await Database.ExecuteSqlAsync($"SELECT pg_advisory_lock({StartLock})", stop);
        return new AdvisoryLock(this);
    }

    public override Task<DatabaseProblem?> InspectAsync(CancellationToken stop) => Task.FromResult<DatabaseProblem?>(null);

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
