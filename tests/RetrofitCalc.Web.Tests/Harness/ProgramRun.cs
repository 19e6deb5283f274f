using System.Diagnostics;

namespace RetrofitCalc.Web.Tests.Harness;

/// <summary>The program as its users start it: a process of its own.</summary>
public sealed class ProgramRun : IAsyncDisposable
{
    private readonly Process _process;
    private readonly Task<string> _errors;

    private ProgramRun(Process process)
    {
        _process = process;
        _errors = process.StandardError.ReadToEndAsync();
    }

    public static ProgramRun Start(string database)
    {
        var start = new ProcessStartInfo("dotnet", [typeof(Program).Assembly.Location])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = Path.GetDirectoryName(typeof(Program).Assembly.Location)!,
        };
        start.Environment["Data__Path"] = database;
        start.Environment["ASPNETCORE_URLS"] = "http://127.0.0.1:0";
        start.Environment.Remove("ConnectionStrings__Postgres");
        return new ProgramRun(Process.Start(start)!);
    }

    /// <summary>The line that says where the program answers; null when it ended first.</summary>
    public async Task<string?> AddressLineAsync() => await _process.StandardOutput.ReadLineAsync();

    public void Kill() => _process.Kill(entireProcessTree: true);

    public async Task<(int ExitCode, string Errors)> EndAsync()
    {
        using var limit = new CancellationTokenSource(TimeSpan.FromMinutes(2));
        await _process.WaitForExitAsync(limit.Token);
        return (_process.ExitCode, await _errors);
    }

    public async ValueTask DisposeAsync()
    {
        if (!_process.HasExited) Kill();
        await _process.WaitForExitAsync();
        _process.Dispose();
    }
}
