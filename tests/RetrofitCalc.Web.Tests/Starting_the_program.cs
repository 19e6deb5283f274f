using Microsoft.Data.Sqlite;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests;

/// <summary>Start-up as a process: one clear message when it cannot be, and no harm done.</summary>
public sealed class Starting_the_program : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("retrofitcalc-start-").FullName;

    private string Database => Path.Combine(_folder, "retrofitcalc.db");

    [Fact]
    public async Task creates_the_database_and_prints_the_address_on_loopback()
    {
        await using var program = ProgramRun.Start(Database);
        Assert.Matches(@"running at http://127\.0\.0\.1:\d+", await program.AddressLineAsync());
        Assert.True(File.Exists(Database));
    }

    [Fact]
    public async Task leaves_a_damaged_file_as_it_is_and_says_so_in_one_message()
    {
        var damaged = "no database, but someone's file " + new string('x', 5000);
        await File.WriteAllTextAsync(Database, damaged);
        await using var program = ProgramRun.Start(Database);
        var (code, errors) = await program.EndAsync();
        Assert.Equal(1, code);
        Assert.Contains("damaged", errors, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", errors, StringComparison.Ordinal);
        Assert.Equal(damaged, await File.ReadAllTextAsync(Database));
    }

    [Fact]
    public async Task waits_for_a_locked_file_only_so_long_and_then_says_so()
    {
        await using (var first = ProgramRun.Start(Database)) await first.AddressLineAsync();
        await using var other = new SqliteConnection($"Data Source={Database};Pooling=False");
        await other.OpenAsync();
        await using var hold = other.CreateCommand();
        hold.CommandText = "PRAGMA locking_mode=EXCLUSIVE; BEGIN EXCLUSIVE;";
        await hold.ExecuteNonQueryAsync();

        await using var second = ProgramRun.Start(Database);
        var (code, errors) = await second.EndAsync();
        Assert.Equal(1, code);
        Assert.DoesNotContain("   at ", errors, StringComparison.Ordinal);
        Assert.NotEmpty(errors);
    }

    [Fact]
    public async Task goes_on_where_an_interrupted_start_left_off()
    {
        var interrupted = ProgramRun.Start(Database);
        while (!File.Exists(Database)) await Task.Delay(5);
        await interrupted.DisposeAsync();
        await using var again = ProgramRun.Start(Database);
        Assert.Contains("running at", await again.AddressLineAsync(), StringComparison.Ordinal);
    }

    public void Dispose()
    {
        SqliteConnection.ClearAllPools();
        Directory.Delete(_folder, recursive: true);
    }
}
