using System.CommandLine;
using System.Globalization;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files;
using RetrofitCalc.Files.Studies;
using RetrofitCalc.Files.Surveys;

namespace RetrofitCalc.Cli;

/// <summary>import and export: survey lines from a table into a study, and out again.</summary>
internal static class SurveyCommands
{
    public static Command MakeImport()
    {
        var study = StudyArgument.Make();
        var survey = new Argument<string>("survey") { Description = "The table of survey lines: CSV or XLSX, headings in its first row." };
        var output = new Option<string>("--out") { Description = "The study file to write. An existing file is not overwritten.", Required = true };
        var sheet = new Option<string?>("--sheet") { Description = "Name of the sheet of an XLSX file; the first when left out." };
        var command = new Command("import", "Adds the lines of a survey table to a study. With any problem in the table nothing is written.") { study, survey, output, sheet };
        command.SetAction(parsed => StudyArgument.With(parsed.GetRequiredValue(study), good =>
            Import(good, parsed.GetRequiredValue(survey), parsed.GetValue(sheet), parsed.GetRequiredValue(output))));
        return command;
    }

    public static Command MakeExport()
    {
        var study = StudyArgument.Make();
        var file = new Argument<string>("survey") { Description = "The CSV file to write. An existing file is not overwritten." };
        var command = new Command("export", "Writes the survey lines of a study as CSV, in the number format of its site.") { study, file };
        command.SetAction(parsed => StudyArgument.With(parsed.GetRequiredValue(study), good =>
        {
            OutputFile.Write(parsed.GetRequiredValue(file), SurveyCsv.Write(good.Lines, Context(good)));
            return ExitCode.Done;
        }));
        return command;
    }

    private static readonly string NoHeading =
        $"None of the headings in the first row is known. Known are: {string.Join(", ", SurveyHeadings.Fields.Select(SurveyHeadings.Of))}. Columns are parted by comma, semicolon, tab or bar.";

    private static int Import(Study study, string path, string? sheet, string output)
    {
        var context = Context(study);
        using var stream = File.OpenRead(path);
        var table = SurveyFile.Read(stream, context.Culture, sheet);
        var preview = table.Value is { } rows ? SurveyImport.Preview(rows, ColumnMatch.Guess(rows.Headers), study, context) : null;
        if (preview is { Match.Columns.Count: 0 }) table = Parsed.Bad<SurveyTable>(NoHeading);
        var problems = table.Value is null ? table.Problems : [.. preview?.Problems ?? []];
        foreach (var problem in problems) Console.Error.WriteLine($"{path}: {problem}");
        if (problems.Count > 0 || preview is null) return ExitCode.ProblemsInInput;
        OutputFile.Write(output, StudyFile.Write(preview.AcceptGoodRows(study)));
        Tell(preview);
        return ExitCode.Done;
    }

    private static void Tell(ImportPreview preview)
    {
        foreach (var note in preview.Table.Notes) Console.Out.WriteLine(note);
        foreach (var column in preview.Match.Unused(preview.Table.Headers.Count)) Console.Out.WriteLine($"Column \"{preview.Table.Headers[column]}\" was not used.");
        foreach (var area in preview.NewAreas) Console.Out.WriteLine($"New area \"{area.Name}\": it has no hours yet.");
        Console.Out.WriteLine($"Lines added: {preview.Rows.Count}.");
    }

    private static SurveyContext Context(Study study)
    {
        var culture = CultureInfo.GetCultureInfo(study.Site.Culture);
        return new SurveyContext(culture, SurveyContext.UsualUnit(culture), study.Areas, study.Catalogue);
    }
}
