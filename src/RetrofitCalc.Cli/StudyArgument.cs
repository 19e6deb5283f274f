using System.CommandLine;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files;
using RetrofitCalc.Files.Studies;

namespace RetrofitCalc.Cli;

/// <summary>The study a command works on: a file, or - for standard input.</summary>
internal static class StudyArgument
{
    public static Argument<string> Make() => new("study") { Description = "The study file (JSON), or - to read standard input." };

    /// <summary>Reads the study and runs something with it; lists what is wrong with it on standard error instead.</summary>
    public static int With(string path, Func<Study, int> run)
    {
        var read = Read(path);
        if (read is { Ok: true, Value: { } study }) return run(study);
        foreach (var problem in read.Problems) Console.Error.WriteLine($"{(path == "-" ? "standard input" : path)}: {problem}");
        return ExitCode.ProblemsInInput;
    }

    private static Parsed<Study> Read(string path)
    {
        using var stream = path == "-" ? Console.OpenStandardInput() : File.OpenRead(path);
        return StudyFile.Read(stream);
    }
}
