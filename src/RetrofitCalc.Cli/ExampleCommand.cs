using System.CommandLine;
using RetrofitCalc.Files.Examples;
using RetrofitCalc.Files.Studies;

namespace RetrofitCalc.Cli;

/// <summary>example: the invented site that ships with the program, as a study file to begin from.</summary>
internal static class ExampleCommand
{
    public static Command Make()
    {
        var file = new Argument<string?>("file") { Description = "Where to write it; standard output when left out.", Arity = ArgumentArity.ZeroOrOne };
        var command = new Command("example", "Writes the worked example (an invented site) as a study file. An existing file is not overwritten.") { file };
        command.SetAction(parsed => Write(parsed.GetValue(file)));
        return command;
    }

    private static int Write(string? path)
    {
        var example = StudyFile.Write(WorkedExample.Load());
        if (path is not null) OutputFile.Write(path, example);
        else Console.OpenStandardOutput().Write(example);
        return ExitCode.Done;
    }
}
