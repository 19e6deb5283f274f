using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;

namespace RetrofitCalc.Data.Tests.Databases;

/// <summary>One empty database and the program's services over it.</summary>
public abstract class TestDatabase : IAsyncLifetime
{
    private ServiceProvider? _services;

    public StudyStore Studies => Get<StudyStore>();
    public StudyHistory History => Get<StudyHistory>();
    public CatalogueStore Catalogue => Get<CatalogueStore>();
    public TariffLibrary Tariffs => Get<TariffLibrary>();
    public SettingsStore Settings => Get<SettingsStore>();
    public DatabaseStart Start => Get<DatabaseStart>();
    public SteppedClock Clock { get; } = new();

    public abstract IReadOnlyDictionary<string, string?> Configuration { get; }

    /// <summary>What the backup scripts are told: the kind of database, and where it is.</summary>
    public abstract (string Kind, string Place) Address { get; }

    /// <summary>Stops and starts what holds the data, as a power cut would.</summary>
    public abstract Task RestartAsync();

    /// <summary>Services of a second running instance.</summary>
    public ServiceProvider NewInstance() => Build(Configuration, Clock);

    public RetrofitContext Open() => Get<IDbContextFactory<RetrofitContext>>().CreateDbContext();

    public static ServiceProvider Build(IReadOnlyDictionary<string, string?> configuration, NodaTime.IClock clock) =>
        new ServiceCollection().AddSingleton(clock)
            .AddRetrofitData(new ConfigurationBuilder().AddInMemoryCollection(configuration).Build()).BuildServiceProvider();

    public virtual async ValueTask InitializeAsync()
    {
        _services = NewInstance();
        Assert.Null(await Start.PrepareAsync());
    }

    public virtual async ValueTask DisposeAsync()
    {
        if (_services is not null) await _services.DisposeAsync();
        GC.SuppressFinalize(this);
    }

    private T Get<T>() where T : notnull => _services!.GetRequiredService<T>();
}
