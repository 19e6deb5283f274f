using System.CommandLine;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Studies;
using RetrofitCalc.Files.Weather;

namespace RetrofitCalc.Cli;

/// <summary>import-weather: the weather year of a study from a weather file.</summary>
internal static class WeatherCommand
{
    public static Command Make()
    {
        var study = StudyArgument.Make();
        var file = new Argument<string>("weather") { Description = "A weather file in EPW format, one year by the hour." };
        var output = new Option<string>("--out") { Description = "The study file to write. An existing file is not overwritten.", Required = true };
        var fill = new Option<bool>("--fill-gaps") { Description = $"Fill missing hours {EpwYear.FillRule}; without it a file with gaps is refused." };
        var command = new Command("import-weather", "Gives a study the outdoor temperatures of a weather file. With any problem nothing is written.") { study, file, output, fill };
        command.SetAction(parsed => StudyArgument.With(parsed.GetRequiredValue(study), good =>
            Import(good, parsed.GetRequiredValue(file), parsed.GetValue(fill), parsed.GetRequiredValue(output))));
        return command;
    }

    private static int Import(Study study, string path, bool fill, string output)
    {
        using var stream = File.OpenRead(path);
        var read = EpwFile.Read(stream);
        if (read.Value is not { } year)
            return Refuse(read.Problems.Select(problem => $"{path}: {problem}"));
        if (year.WhyNotFilled is { } reason)
            return Refuse([$"{path}: {reason}"]);
        if (year.MissingCount > 0 && !fill)
            return Refuse([$"{path}: without a temperature: {string.Join("; ", year.Missing)}. Give --fill-gaps to fill them {EpwYear.FillRule}."]);
        OutputFile.Write(output, StudyFile.Write(study with { Weather = year.ToWeather() }));
        return ExitCode.Done;
    }

    private static int Refuse(IEnumerable<string> reasons)
    {
        foreach (var reason in reasons) Console.Error.WriteLine(reason);
        return ExitCode.ProblemsInInput;
    }
}
