using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using NodaTime;
using Npgsql;
using RetrofitCalc.Data.Postgres;
using RetrofitCalc.Data.Seed;
using RetrofitCalc.Data.Sqlite;

namespace RetrofitCalc.Data;

/// <summary>Brings the database up to date before the program serves anyone. Deletes and overwrites nothing.</summary>
public sealed class DatabaseStart(IDbContextFactory<RetrofitContext> contexts, IClock clock)
{
    /// <summary>Migrates and seeds; null when all is well.</summary>
    public async Task<DatabaseProblem?> PrepareAsync(CancellationToken stop = default)
    {
        try
        {
            await using var db = await contexts.CreateDbContextAsync(stop);
            return await PrepareAsync(db, stop);
        }
        catch (Exception error) when (Explain(error) is { } problem)
        {
            return problem;
        }
    }

    /// <summary>What an error of the database means; null when it is not the database's.</summary>
    public static DatabaseProblem? Explain(Exception error) => error switch
    {
        SqliteException sqlite => SqliteProblems.From(sqlite),
        NpgsqlException postgres => PostgresProblems.From(postgres),
        TimeoutException => new("Another start of the program is still preparing the database.",
            "Nothing was changed by this one.", "Wait until it is ready, or close it, then try again."),
        UnauthorizedAccessException denied => SqliteProblems.NotAllowed(denied.Message),
        IOException io => SqliteProblems.NotAllowed(io.Message),
        _ => error.InnerException is { } inner ? Explain(inner) : null,
    };

    private async Task<DatabaseProblem?> PrepareAsync(RetrofitContext db, CancellationToken stop)
    {
        if (await db.InspectAsync(stop) is { } unsound) return unsound;
        await using var claim = await db.ClaimAsync(stop);
        var unknown = (await db.Database.GetAppliedMigrationsAsync(stop)).Except(db.Database.GetMigrations()).ToList();
        if (unknown.Count > 0) return Newer(unknown[^1]);
        await db.Database.MigrateAsync(stop);
        await new Seeding(db, clock.GetCurrentInstant()).RunAsync(stop);
        return null;
    }

    private static DatabaseProblem Newer(string migration) => new(
        $"The database was written by a newer version of the program (it has {migration}).",
        "Nothing in it was changed.", "Install that version or a later one; this one cannot read it.");
}
