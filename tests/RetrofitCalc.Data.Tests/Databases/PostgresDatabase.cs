namespace RetrofitCalc.Data.Tests.Databases;

/// <summary>A database of its own on the shared server; the program creates it.</summary>
public sealed class PostgresDatabase(PostgresServer server) : TestDatabase
{
    private readonly string _name = $"retrofit_{Guid.NewGuid():N}";

    public override IReadOnlyDictionary<string, string?> Configuration =>
        new Dictionary<string, string?> { ["ConnectionStrings:Postgres"] = server.ConnectionString(_name) };

    public override (string Kind, string Place) Address => ("postgres", server.Uri(_name));

    public override Task RestartAsync() => server.RestartAsync();
}
