using System.CommandLine;
using NodaTime;
using NodaTime.Text;
using RetrofitCalc.Engine;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Metering;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Meters;
using RetrofitCalc.Files.Studies;

namespace RetrofitCalc.Cli;

/// <summary>import-meter and export-meter: a year of interval readings into a study and out again.</summary>
internal static class MeterCommands
{
    private static readonly Option<string> Output = new("--out") { Description = "The study file to write. An existing file is not overwritten.", Required = true };
    private static readonly Option<string?> From = new("--from") { Description = "First day of the twelve months, such as 2026-01-01; the newest with enough readings when left out." };
    private static readonly Option<bool> Fill = new("--fill-gaps") { Description = "Fill gaps and mark them. Without it, readings with gaps are refused." };

    public static Command MakeImport()
    {
        var study = StudyArgument.Make();
        var file = new Argument<string>("readings") { Description = "Interval data: ESPI XML, CSV or XLSX." };
        var table = new MeterChoiceOptions();
        var command = new Command("import-meter", "Gives a study a year of interval readings and says what was found in them. With any problem nothing is written.") { study, file, Output, From, Fill };
        foreach (var option in table.All) command.Add(option);
        command.SetAction(parsed => StudyArgument.With(parsed.GetRequiredValue(study), good =>
        {
            var path = parsed.GetRequiredValue(file);
            var zone = DateTimeZoneProviders.Tzdb[good.Site.TimeZone];
            return MeterInput.Read(path, good, table.Of(parsed), zone) is { } source ? Import(good, source, zone, parsed) : ExitCode.ProblemsInInput;
        }));
        return command;
    }

    public static Command MakeExport()
    {
        var study = StudyArgument.Make();
        var file = new Argument<string>("readings") { Description = "The CSV file to write. An existing file is not overwritten." };
        var command = new Command("export-meter", "Writes the meter year of a study as CSV: start of each interval, kW, and a mark where it was filled.") { study, file };
        command.SetAction(parsed => StudyArgument.With(parsed.GetRequiredValue(study), good =>
        {
            if (good.Meter is not { } meter) return Refuse("The study has no meter year.");
            OutputFile.Write(parsed.GetRequiredValue(file), MeterCsv.Write(meter, DateTimeZoneProviders.Tzdb[good.Site.TimeZone]));
            return ExitCode.Done;
        }));
        return command;
    }

    private static int Import(Study study, MeterSource source, DateTimeZone zone, ParseResult parsed)
    {
        var cleaned = MeterCleaning.Of(source.Readings, zone);
        var spans = BillingSpans.Of(cleaned, study.Tariff.Reading);
        Tell(source, cleaned, spans);
        if (FirstDay(cleaned, spans, parsed.GetValue(From)) is not { } first) return ExitCode.ProblemsInInput;
        var year = cleaned.Year(first, source.Name, new Provenance(EvidenceKind.Measured, source.About));
        var missing = year.Watts.Count(watts => watts is null);
        if (missing > 0 && !parsed.GetValue(Fill)) return Refuse($"Nothing is known of {missing} of the {year.Watts.Count} intervals from {first:uuuu-MM-dd} on. Give --fill-gaps to have them filled and marked, or --from for other months.");
        var changed = study with { Meter = missing > 0 ? GapFilling.Fill(year, zone) : year };
        if (StudyEvaluation.Check(changed) is { Count: > 0 } problems) return Refuse([.. problems.Select(problem => $"{problem.Path}: {problem.Message}")]);
        OutputFile.Write(parsed.GetRequiredValue(Output), StudyFile.Write(changed));
        Console.Out.WriteLine($"Taken in: {year.Watts.Count} intervals of {year.IntervalMinutes} minutes from {first:uuuu-MM-dd} on{(missing > 0 ? $", {missing} of them filled" : "")}.");
        return ExitCode.Done;
    }

    private static LocalDate? FirstDay(CleanedMeter cleaned, IReadOnlyList<MeterSpan> spans, string? from)
    {
        if (from is null && spans.Count > 0) return spans[0].First;
        if (from is not null && cleaned.IntervalMinutes > 0 && LocalDatePattern.Iso.Parse(from) is { Success: true } day && day.Value.Year is >= 1900 and <= 2199) return day.Value;
        Refuse(cleaned.IntervalMinutes == 0 ? "There are no readings of an hour or less." : from is null ? "The readings hold no twelve months of which at least three quarters are known." : $"{from} is not a date such as 2026-01-01.");
        return null;
    }

    private static void Tell(MeterSource source, CleanedMeter cleaned, IReadOnlyList<MeterSpan> spans)
    {
        Console.Out.WriteLine($"{source.Name}: {source.About}.");
        foreach (var note in source.Notes) Console.Out.WriteLine(note);
        foreach (var finding in cleaned.Findings)
            Console.Out.WriteLine($"{finding.Kind}: {finding.Count}, first at {finding.First[0].Time:uuuu-MM-dd HH:mm}{(finding.First[0].Line > 0 ? $" (line {finding.First[0].Line})" : "")}. {finding.Rule}");
        foreach (var span in spans)
            Console.Out.WriteLine(FormattableString.Invariant($"Twelve months from {span.First:uuuu-MM-dd}: {span.KnownShare:P1} known."));
    }

    public static int Refuse(params IEnumerable<string> reasons)
    {
        foreach (var reason in reasons) Console.Error.WriteLine(reason);
        return ExitCode.ProblemsInInput;
    }
}
