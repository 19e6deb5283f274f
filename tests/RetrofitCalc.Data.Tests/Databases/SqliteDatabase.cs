using Microsoft.Data.Sqlite;

namespace RetrofitCalc.Data.Tests.Databases;

public sealed class SqliteDatabase : TestDatabase
{
    private readonly string _folder = Directory.CreateTempSubdirectory("retrofit-data-").FullName;

    public string FilePath => Path.Combine(_folder, "new folder", "studies.db");

    public override IReadOnlyDictionary<string, string?> Configuration =>
        new Dictionary<string, string?> { ["Data:Path"] = FilePath, ["Data:BusySeconds"] = "5" };

    public override (string Kind, string Place) Address => ("sqlite", FilePath);

    public override Task RestartAsync()
    {
        SqliteConnection.ClearAllPools();
        return Task.CompletedTask;
    }

    public override async ValueTask DisposeAsync()
    {
        await base.DisposeAsync();
        SqliteConnection.ClearAllPools();
        Directory.Delete(_folder, recursive: true);
    }
}
