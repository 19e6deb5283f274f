using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using NodaTime;
using RetrofitCalc.Data;
using RetrofitCalc.Files.Safety;
using RetrofitCalc.Web.Shared;

namespace RetrofitCalc.Web.Tests.Harness;

/// <summary>A database of its own in a temporary file, prepared as the program prepares it, without the web server.</summary>
public sealed class LocalData : IAsyncLifetime
{
    private readonly string _folder = Directory.CreateTempSubdirectory("retrofitcalc-data-").FullName;
    private ServiceProvider _services = null!;

    private string FilePath => Path.Combine(_folder, "retrofitcalc.db");

    public StudyStore Studies => _services.GetRequiredService<StudyStore>();

    public async ValueTask InitializeAsync()
    {
        var settings = new ConfigurationBuilder()
            .AddInMemoryCollection([new("Data:Path", FilePath)]).Build();
        _services = new ServiceCollection().AddSingleton<IClock>(SystemClock.Instance).AddLogging().AddRetrofitData(settings).BuildServiceProvider();
        Assert.Null(await _services.GetRequiredService<DatabaseStart>().PrepareAsync());
    }

    /// <summary>One person's session, as each open page has one.</summary>
    public StudySession Session() =>
        new(Studies, _services.GetRequiredService<CatalogueStore>(), SafetyRuleFile.Load(), SystemClock.Instance);

    /// <summary>The database cannot be opened, as when a disk or a server is away.</summary>
    public void TakeAway()
    {
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        File.Move(FilePath, FilePath + "-away");
        Directory.CreateDirectory(FilePath);
    }

    public void PutBack()
    {
        Directory.Delete(FilePath);
        File.Move(FilePath + "-away", FilePath);
    }

    public async ValueTask DisposeAsync()
    {
        await _services.DisposeAsync();
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        Directory.Delete(_folder, recursive: true);
    }
}
