using System.CommandLine;
using NodaTime;
using NodaTime.Extensions;
using NodaTime.Text;
using RetrofitCalc.Engine;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Safety;
using RetrofitCalc.Files.Spectra;
using RetrofitCalc.Files.Studies;
using RetrofitCalc.Reports;

namespace RetrofitCalc.Cli;

/// <summary>report: the summary of a study as PDF, workbook and table, the same as the pages give.</summary>
internal static class ReportCommand
{
    private static readonly Option<string?> Pdf = new("--pdf") { Description = "Where to write the summary as PDF." };
    private static readonly Option<string?> Xlsx = new("--xlsx") { Description = "Where to write the workbook with live formulas." };
    private static readonly Option<string?> Csv = new("--csv") { Description = "Where to write the results as a table." };
    private static readonly Option<string?> Chosen = new("--option") { Description = "Id of the option asked for; the study's own choice when left out." };
    private static readonly Option<string?> Date = new("--date") { Description = "Date printed on the sheets, as 2027-03-15; today when left out." };
    private static readonly Option<bool> Overwrite = new("--overwrite") { Description = "Replace files that are there already." };

    public static Command Make()
    {
        var study = StudyArgument.Make();
        var command = new Command("report", "Writes the summary of a study as PDF, XLSX, CSV, or all three.") { study, Pdf, Xlsx, Csv, Chosen, Date, Overwrite };
        command.Validators.Add(asked =>
        {
            if (asked.GetValue(Pdf) is null && asked.GetValue(Xlsx) is null && asked.GetValue(Csv) is null)
                asked.AddError("Name at least one file to write: --pdf, --xlsx or --csv.");
            if (asked.GetValue(Date) is { } date && !LocalDatePattern.Iso.Parse(date).Success)
                asked.AddError($"--date {date} is no date; write it as 2027-03-15.");
        });
        command.SetAction(asked => StudyArgument.With(asked.GetRequiredValue(study), good => Write(good, asked)));
        return command;
    }

    private static int Write(Study study, ParseResult asked)
    {
        if (asked.GetValue(Chosen) is { } id && study.Options.All(o => o.Id != id))
        {
            Console.Error.WriteLine($"The study has no option {id}. It has: {string.Join(", ", study.Options.Select(o => o.Id))}.");
            return ExitCode.ProblemsInInput;
        }
        var result = StudyEvaluation.Run(study with { ChosenOption = asked.GetValue(Chosen) ?? study.ChosenOption }, SafetyRuleFile.Load());
        var summary = BudgetSummary.From(result, new SummaryRequest { Date = Day(asked.GetValue(Date)), Rules = SafetyRuleFile.Load(), Spectra = ProductSpectra.Of(result.Study, null) });
        Save(Pdf, output => SummaryPdf.Write(summary, StudyFile.Write(study), output));
        Save(Xlsx, output => SummaryWorkbook.Write(summary, result, output));
        Save(Csv, output =>
        {
            using var text = new StreamWriter(output, leaveOpen: true);
            ResultsCsv.Write(result, text);
        });
        return ExitCode.Done;

        void Save(Option<string?> option, Action<Stream> write)
        {
            if (asked.GetValue(option) is not { } path) return;
            using var content = new MemoryStream();
            write(content);
            OutputFile.Write(path, content.ToArray(), asked.GetValue(Overwrite));
        }
    }

    private static LocalDate Day(string? date) => date is null
        ? SystemClock.Instance.InTzdbSystemDefaultZone().GetCurrentDate()
        : LocalDatePattern.Iso.Parse(date).Value;
}
