using System.Diagnostics;
using System.Net;
using System.Net.Sockets;

namespace RetrofitCalc.Data.Tests.Databases;

/// <summary>A PostgreSQL server of our own in a temporary folder. Missing programs fail the tests: they are never passed over.</summary>
public sealed class PostgresServer : IAsyncLifetime
{
    private readonly string _folder = Directory.CreateTempSubdirectory("retrofit-pg-").FullName;
    private readonly int _port = FreePort();

    public string ConnectionString(string database) =>
        $"Host=127.0.0.1;Port={_port};Username=retrofit;Database={database};Include Error Detail=true";

    public string Uri(string database) => $"postgresql://retrofit@127.0.0.1:{_port}/{database}";

    public async ValueTask InitializeAsync()
    {
        if (Environment.UserName == "root") await RunAsync("chown", "postgres", _folder);
        await RunAsServerAsync("initdb", "-D", Data, "-U", "retrofit", "-A", "trust", "-E", "UTF8", "--locale=C.UTF-8", "--no-sync");
        await ControlAsync("start");
    }

    public Task RestartAsync() => ControlAsync("restart");

    public Task StopAsync() => RunAsServerAsync("pg_ctl", "-w", "-D", Data, "-m", "immediate", "stop");

    public Task StartAsync() => ControlAsync("start");

    public async ValueTask DisposeAsync()
    {
        await StopAsync();
        Directory.Delete(_folder, recursive: true);
    }

    private string Data => Path.Combine(_folder, "data");

    private Task ControlAsync(string action) => RunAsServerAsync(
        "pg_ctl", "-w", "-D", Data, "-m", "fast", "-l", Path.Combine(_folder, "log"),
        "-o", $"-c listen_addresses=127.0.0.1 -c port={_port} -c unix_socket_directories={_folder} -c fsync=off", action);

    /// <summary>PostgreSQL refuses to run as root.</summary>
    private static Task RunAsServerAsync(string program, params string[] arguments) => Environment.UserName == "root"
        ? RunAsync("runuser", ["-u", "postgres", "--", Find(program), .. arguments])
        : RunAsync(Find(program), arguments);

    private static async Task RunAsync(string program, params string[] arguments)
    {
        // Output is not redirected: the server would inherit the pipe and keep the reader waiting.
        using var process = Process.Start(new ProcessStartInfo("/bin/sh", ["-c", "exec \"$@\" >/dev/null 2>&1", "sh", program, .. arguments]))!;
        await process.WaitForExitAsync();
        if (process.ExitCode != 0)
            throw new InvalidOperationException($"{program} {string.Join(' ', arguments)} ended with {process.ExitCode}.");
    }

    /// <summary>Debian keeps the server's programs out of the path, in a folder for each version.</summary>
    private static string Find(string program) =>
        Folders().Select(f => Path.Combine(f, program)).FirstOrDefault(File.Exists)
        ?? throw new FileNotFoundException($"PostgreSQL's {program} is not installed; tests/run.sh installs it.");

    private static IEnumerable<string> Folders()
    {
        const string debian = "/usr/lib/postgresql";
        var versions = Directory.Exists(debian) ? Directory.GetDirectories(debian).OrderDescending().Select(v => Path.Combine(v, "bin")) : [];
        return versions.Concat((Environment.GetEnvironmentVariable("PATH") ?? "").Split(':'));
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}

[CollectionDefinition(Name)]
public sealed class PostgresCollection : ICollectionFixture<PostgresServer>
{
    public const string Name = "PostgreSQL";
}
