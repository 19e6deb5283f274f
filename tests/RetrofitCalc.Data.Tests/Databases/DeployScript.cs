using System.Diagnostics;

namespace RetrofitCalc.Data.Tests.Databases;

/// <summary>Runs the scripts an administrator runs.</summary>
internal static class DeployScript
{
    public static async Task<(int Code, string Output)> RunAsync(string script, params string[] arguments)
    {
        var start = new ProcessStartInfo("bash", [Path.Combine(Root(), "deploy", script), .. arguments])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEndAsync();
        var errors = process.StandardError.ReadToEndAsync();
        await process.WaitForExitAsync();
        return (process.ExitCode, (await output + await errors).Trim());
    }

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "RetrofitCalc.sln"))) folder = folder.Parent!;
        return folder.FullName;
    }
}
