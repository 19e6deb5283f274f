using Microsoft.EntityFrameworkCore;
using RetrofitCalc.Data.Postgres;
using RetrofitCalc.Data.Sqlite;

namespace RetrofitCalc.Data.Tests;

/// <summary>Needs no server: the model is compared with the last migration's snapshot.</summary>
public sealed class The_model
{
    [Fact]
    public void is_what_the_SQLite_migrations_build()
    {
        using var context = new SqliteDesignFactory().CreateDbContext([]);
        Assert.False(context.Database.HasPendingModelChanges());
    }

    [Fact]
    public void is_what_the_PostgreSQL_migrations_build()
    {
        using var context = new PostgresDesignFactory().CreateDbContext([]);
        Assert.False(context.Database.HasPendingModelChanges());
    }
}
