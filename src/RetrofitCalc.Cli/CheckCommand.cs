using System.CommandLine;

namespace RetrofitCalc.Cli;

/// <summary>check: does the study read, and can it be evaluated?</summary>
internal static class CheckCommand
{
    public static Command Make()
    {
        var study = StudyArgument.Make();
        var command = new Command("check", "Reads a study and lists what is wrong with it by line, path and reason.") { study };
        command.SetAction(parsed => StudyArgument.With(parsed.GetRequiredValue(study), good =>
        {
            Console.Out.WriteLine($"{good.Name}: no problems found. Areas: {good.Areas.Count}, lines: {good.Lines.Count}, options: {good.Options.Count}.");
            return ExitCode.Done;
        }));
        return command;
    }
}
