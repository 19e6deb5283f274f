using System.CommandLine;
using System.Text.Json;
using RetrofitCalc.Engine;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Safety;
using RetrofitCalc.Files.Studies;

namespace RetrofitCalc.Cli;

/// <summary>evaluate: what the lighting costs now, and what each option brings.</summary>
internal static class EvaluateCommand
{
    public static Command Make()
    {
        var study = StudyArgument.Make();
        var json = new Option<bool>("--json") { Description = "Print the whole result as JSON instead of a table." };
        var command = new Command("evaluate", "Evaluates a study and prints now and every option side by side.") { study, json };
        command.SetAction(parsed => StudyArgument.With(parsed.GetRequiredValue(study), good => Print(good, parsed.GetValue(json))));
        return command;
    }

    private static int Print(Study study, bool asJson)
    {
        var result = StudyEvaluation.Run(study, SafetyRuleFile.Load());
        Console.Out.WriteLine(asJson ? JsonSerializer.Serialize(result, RetrofitJson.Options) : ResultText.Of(result));
        return ExitCode.Done;
    }
}
