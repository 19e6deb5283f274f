using System.CommandLine;
using RetrofitCalc.Engine;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Studies;
using RetrofitCalc.Files.Tariffs;

namespace RetrofitCalc.Cli;

/// <summary>import-tariff and export-tariff: the tariff of a study from and to a rate record.</summary>
internal static class TariffCommands
{
    public static Command MakeImport()
    {
        var study = StudyArgument.Make();
        var file = new Argument<string>("record") { Description = "A file of rate records of the US Utility Rate Database (JSON)." };
        var output = new Option<string>("--out") { Description = "The study file to write. An existing file is not overwritten.", Required = true };
        var number = new Option<int?>("--record") { Description = "Which record, counted from 1, when the file holds several." };
        var command = new Command("import-tariff", "Gives a study the tariff of a rate record and says of every field whether it was used. With any problem nothing is written.") { study, file, output, number };
        command.SetAction(parsed => StudyArgument.With(parsed.GetRequiredValue(study), good =>
            Import(good, parsed.GetRequiredValue(file), parsed.GetValue(number), parsed.GetRequiredValue(output))));
        return command;
    }

    public static Command MakeExport()
    {
        var study = StudyArgument.Make();
        var file = new Argument<string>("record") { Description = "The JSON file to write. An existing file is not overwritten." };
        var command = new Command("export-tariff", "Writes the tariff of a study as a rate record, and says what the record cannot hold.") { study, file };
        command.SetAction(parsed => StudyArgument.With(parsed.GetRequiredValue(study), good => Export(good.Tariff, parsed.GetRequiredValue(file))));
        return command;
    }

    private static int Import(Study study, string path, int? number, string output)
    {
        using var stream = File.OpenRead(path);
        var records = RateRecordFile.Read(stream);
        if (records.Value is not { } all)
            return Refuse(records.Problems.Select(problem => $"{path}: {problem}"));
        if (number is null && all.Count > 1)
            return Refuse([$"{path} holds {all.Count} records. Choose one with --record and its number.", .. all.Select((record, i) => $"{i + 1,5}  {record.Name} ({record.Utility})")]);
        if (number is { } given && (given < 1 || given > all.Count))
            return Refuse([$"{path} holds {all.Count} records; --record must be 1 to {all.Count}."]);
        var reading = all[(number ?? 1) - 1].Read();
        Tell(reading);
        if (reading.Tariff is not { Ok: true, Value: { } tariff })
            return Refuse(reading.Tariff.Problems.Select(problem => $"{path}: {problem}"));
        var changed = study with { Tariff = tariff };
        if (StudyEvaluation.Check(changed) is { Count: > 0 } problems)
            return Refuse(problems.Select(problem => $"{problem.Path}: {problem.Message}"));
        OutputFile.Write(output, StudyFile.Write(changed));
        return ExitCode.Done;
    }

    private static int Export(Tariff tariff, string path)
    {
        var written = RateRecordFile.Write(tariff);
        if (written.Value is not { } record)
            return Refuse(written.Problems.Select(problem => problem.Message));
        OutputFile.Write(path, record.Json);
        foreach (var lost in record.NotHeld) Console.Out.WriteLine($"Not in the record: {lost}");
        return ExitCode.Done;
    }

    private static void Tell(RateReading reading)
    {
        foreach (var field in reading.Fields)
            Console.Out.WriteLine($"{Words(field.Use),-9} {field.Path} (line {field.Line}): {field.Note}".TrimEnd(' ', ':'));
    }

    private static string Words(FieldUse use) => use switch
    {
        FieldUse.Used => "used",
        FieldUse.Doubtful => "doubtful",
        _ => "not used",
    };

    private static int Refuse(IEnumerable<string> reasons)
    {
        foreach (var reason in reasons) Console.Error.WriteLine(reason);
        return ExitCode.ProblemsInInput;
    }
}
