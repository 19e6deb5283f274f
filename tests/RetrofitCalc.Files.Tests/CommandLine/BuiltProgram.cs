using System.Diagnostics;
using System.Text;

namespace RetrofitCalc.Files.Tests.CommandLine;

/// <summary>Runs the program as built, the way a script does.</summary>
internal sealed record BuiltProgram(int ExitCode, string Output, string Errors)
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(2);

    public static BuiltProgram Run(params string[] arguments) => RunWithInput("", arguments);

    public static BuiltProgram RunWithInput(string input, params string[] arguments)
    {
        var program = Path.Combine(AppContext.BaseDirectory, OperatingSystem.IsWindows() ? "RetrofitCalc.Cli.exe" : "RetrofitCalc.Cli");
        using var process = Process.Start(new ProcessStartInfo(program, arguments)
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardInputEncoding = new UTF8Encoding(false),
            StandardOutputEncoding = Encoding.UTF8,
            StandardErrorEncoding = Encoding.UTF8,
        })!;
        var (output, errors) = (process.StandardOutput.ReadToEndAsync(), process.StandardError.ReadToEndAsync());
        process.StandardInput.Write(input);
        process.StandardInput.Close();
        if (!process.WaitForExit(Patience)) process.Kill();
        return new BuiltProgram(process.ExitCode, output.Result, errors.Result);
    }
}
