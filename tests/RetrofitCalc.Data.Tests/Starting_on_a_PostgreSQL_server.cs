using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using NodaTime;
using RetrofitCalc.Data.Tests.Databases;

namespace RetrofitCalc.Data.Tests;

[Collection(PostgresCollection.Name)]
public sealed class Starting_on_a_PostgreSQL_server(PostgresServer server)
{
    [Fact]
    public async Task works_for_several_instances_at_the_same_moment()
    {
        var db = new PostgresDatabase(server);
        await db.InitializeAsync();
        var instances = Enumerable.Range(0, 4).Select(_ => db.NewInstance()).ToList();
        var problems = await Task.WhenAll(instances.Select(i => Task.Run(() => i.GetRequiredService<DatabaseStart>().PrepareAsync())));
        Assert.All(problems, Assert.Null);
        await using var context = db.Open();
        Assert.Equal(1, await context.Settings.CountAsync());
        foreach (var instance in instances) await instance.DisposeAsync();
        await db.DisposeAsync();
    }

    [Fact]
    public async Task works_for_several_instances_on_a_server_without_the_database()
    {
        var db = new PostgresDatabase(server);
        var instances = Enumerable.Range(0, 4).Select(_ => db.NewInstance()).ToList();
        var problems = await Task.WhenAll(instances.Select(i => Task.Run(() => i.GetRequiredService<DatabaseStart>().PrepareAsync())));
        Assert.All(problems, Assert.Null);
        foreach (var instance in instances) await instance.DisposeAsync();
        await db.DisposeAsync();
    }

    [Fact]
    public async Task says_when_the_setting_is_not_understood()
    {
        await using var instance = TestDatabase.Build(
            new Dictionary<string, string?> { ["ConnectionStrings:Postgres"] = "postgresql://retrofit@localhost/retrofit" }, SystemClock.Instance);
        var problem = await instance.GetRequiredService<DatabaseStart>().PrepareAsync();
        Assert.Contains("ConnectionStrings:Postgres is not understood", problem!.What);
    }

    [Fact]
    public async Task says_when_the_server_does_not_answer_and_works_once_it_does()
    {
        var db = new PostgresDatabase(server);
        await db.InitializeAsync();
        await server.StopAsync();
        try
        {
            Assert.Contains("does not answer", (await db.Start.PrepareAsync())!.What);
        }
        finally
        {
            await server.StartAsync();
        }
        Assert.Null(await db.Start.PrepareAsync());
        await db.DisposeAsync();
    }

    [Fact]
    public async Task refuses_a_database_of_a_newer_version()
    {
        var db = new PostgresDatabase(server);
        await db.InitializeAsync();
        await using (var context = db.Open())
            await context.Database.ExecuteSqlAsync($"""INSERT INTO "__EFMigrationsHistory" VALUES ('29990101000000_Future', '99.0.0')""");
        Assert.Contains("29990101000000_Future", (await db.Start.PrepareAsync())!.What);
        await db.DisposeAsync();
    }

    [Fact]
    public async Task says_when_the_user_may_not_enter()
    {
        var unknown = server.ConnectionString("postgres").Replace("Username=retrofit", "Username=nobody");
        await using var instance = TestDatabase.Build(
            new Dictionary<string, string?> { ["ConnectionStrings:Postgres"] = unknown }, SystemClock.Instance);
        var problem = await instance.GetRequiredService<DatabaseStart>().PrepareAsync();
        Assert.Contains("user name or password", problem!.What);
    }
}
