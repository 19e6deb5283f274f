using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;
using NodaTime;
using RetrofitCalc.Data.Postgres;
using RetrofitCalc.Data.Sqlite;

namespace RetrofitCalc.Data;

public static class RetrofitDataServices
{
    /// <summary>PostgreSQL when ConnectionStrings:Postgres is set, else one SQLite file in the user's data folder (or at Data:Path).</summary>
    public static IServiceCollection AddRetrofitData(this IServiceCollection services, IConfiguration configuration)
    {
        if (configuration.GetConnectionString("Postgres") is { Length: > 0 } server)
            Add<PostgresRetrofitContext>(services, options => options.UseNpgsql(server, npgsql =>
                npgsql.EnableRetryOnFailure(3, TimeSpan.FromSeconds(2), null))); // a restarted server leaves dead connections in the pool
        else
            Add<SqliteRetrofitContext>(services, options => options.UseSqlite(SqliteConnectionString(configuration)));
        services.TryAddSingleton<IClock>(SystemClock.Instance);
        return services.AddSingleton<StudyStore>().AddSingleton<StudyHistory>().AddSingleton<CatalogueStore>()
            .AddSingleton<TariffLibrary>().AddSingleton<SettingsStore>().AddSingleton<DatabaseStart>();
    }

    private static void Add<T>(IServiceCollection services, Action<DbContextOptionsBuilder> database) where T : RetrofitContext
    {
        services.AddDbContextFactory<T>(database);
        services.AddSingleton<IDbContextFactory<RetrofitContext>>(s => new AnyProvider<T>(s.GetRequiredService<IDbContextFactory<T>>()));
    }

    /// <summary>The time-out is how long a write waits for another one to finish.</summary>
    private static string SqliteConnectionString(IConfiguration configuration)
    {
        var path = Path.GetFullPath(configuration["Data:Path"] is { Length: > 0 } chosen ? chosen : DefaultPath);
        return new SqliteConnectionStringBuilder
        {
            DataSource = path,
            ForeignKeys = true,
            DefaultTimeout = int.TryParse(configuration["Data:BusySeconds"], out var seconds) ? seconds : 15,
        }.ToString();
    }

    private static string DefaultPath => Path.Combine(
        Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.Create),
        "RetrofitCalc", "retrofitcalc.db");

    /// <summary>Lets the stores ask for the shared model without knowing the database.</summary>
    private sealed class AnyProvider<T>(IDbContextFactory<T> own) : IDbContextFactory<RetrofitContext> where T : RetrofitContext
    {
        public RetrofitContext CreateDbContext() => own.CreateDbContext();
    }
}
