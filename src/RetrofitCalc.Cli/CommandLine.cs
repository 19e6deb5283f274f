using System.CommandLine;
using System.Text;

namespace RetrofitCalc.Cli;

/// <summary>The commands of the program. Each does one thing and says how it went by its exit code.</summary>
internal static class CommandLine
{
    public static int Run(string[] args)
    {
        Console.OutputEncoding = Encoding.UTF8;
        var parsed = Root().Parse(args);
        if (parsed.Errors.Count == 0) return Guarded(() => parsed.Invoke(new InvocationConfiguration { EnableDefaultExceptionHandler = false }));
        foreach (var error in parsed.Errors) Console.Error.WriteLine(error.Message);
        Console.Error.WriteLine("Use --help to see what can be asked.");
        return ExitCode.WrongUsage;
    }

    private static RootCommand Root() => new($"RetrofitCalc on the command line: checks and evaluates study files, and moves surveys, tariffs, meter data and light in and out of them.{Environment.NewLine}{Environment.NewLine}{ExitCode.Explained}")
    {
        EvaluateCommand.Make(),
        CheckCommand.Make(),
        ReportCommand.Make(),
        ExampleCommand.Make(),
        SurveyCommands.MakeImport(),
        SurveyCommands.MakeExport(),
        TariffCommands.MakeImport(),
        TariffCommands.MakeExport(),
        MeterCommands.MakeImport(),
        MeterCommands.MakeExport(),
        WeatherCommand.Make(),
        ReadingsCommand.MakeImport(),
        ReadingsCommand.MakeExport(),
        SpectrumCommand.Make(),
        PhotometryCommand.Make(),
    };

    /// <summary>Trouble with files is no fault of the program: one line says what, and nothing is left half-written.</summary>
    private static int Guarded(Func<int> run)
    {
        try
        {
            return run();
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            Console.Error.WriteLine(trouble.Message);
            return ExitCode.FileTrouble;
        }
    }
}
