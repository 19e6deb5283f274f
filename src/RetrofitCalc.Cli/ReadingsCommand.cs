using System.CommandLine;
using System.Globalization;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Spectra;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files;
using RetrofitCalc.Files.Readings;
using RetrofitCalc.Files.Surveys;
using RetrofitCalc.Files.Typing;

namespace RetrofitCalc.Cli;

/// <summary>import-readings and export-readings: a grid of light readings into an area of a study, and out again.</summary>
internal static class ReadingsCommand
{
    private static readonly Option<string> Area = new("--area") { Description = "Id or name of the area.", Required = true };
    private static readonly Option<string> Height = new("--height") { Description = "Height of the lamps over the sensor, such as \"12 in\" or 0.3 m.", Required = true };
    private static readonly Option<string?> Set = new("--set") { Description = "Id of the set of readings; one of that id is replaced. A new one when left out." };
    private static readonly Option<ReadingPattern> Pattern = new("--pattern") { Description = "How the readings lie." };
    private static readonly Option<LightUnit?> Unit = new("--unit") { Description = "Unit of the meter, where the corner of the table does not name it." };
    private static readonly Option<string?> Family = new("--lux-of") { Description = $"Kind of lamp by which lux become photons: {string.Join(", ", NamedLuxFactors.All.Select(factor => $"\"{factor.Name}\""))}." };
    private static readonly Option<string?> Step = new("--step") { Description = "Name of the lit step while reading; all lamps when left out." };
    private static readonly Option<string> Out = new("--out") { Description = "The study file to write. An existing file is not overwritten.", Required = true };

    public static Command MakeImport()
    {
        var study = StudyArgument.Make();
        var file = new Argument<string>("readings") { Description = "A grid of readings as CSV or text, with places in a heading row and column or evenly over the bench." };
        var command = new Command("import-readings", "Gives an area of a study a set of light readings. With any problem nothing is written.") { study, file, Area, Height, Set, Pattern, Unit, Family, Step, Out };
        command.SetAction(parsed => StudyArgument.With(parsed.GetRequiredValue(study), good => Import(good, parsed.GetRequiredValue(file), parsed)));
        return command;
    }

    public static Command MakeExport()
    {
        var study = StudyArgument.Make();
        var set = new Option<string>("--set") { Description = "Id of the set of readings.", Required = true };
        var file = new Argument<string>("readings") { Description = "The CSV file to write. An existing file is not overwritten." };
        var command = new Command("export-readings", "Writes a set of light readings as CSV, in the number format of the site.") { study, file, Area, set };
        command.SetAction(parsed => StudyArgument.With(parsed.GetRequiredValue(study), good =>
        {
            if (Find(good, parsed.GetRequiredValue(Area))?.Light?.Readings.FirstOrDefault(r => r.Id == parsed.GetRequiredValue(set)) is not { } found)
                return Refusal.Of([$"The study has no area {parsed.GetValue(Area)} with a set of readings {parsed.GetValue(set)}."]);
            OutputFile.Write(parsed.GetRequiredValue(file), ReadingsCsv.Write(found, Culture(good)));
            return ExitCode.Done;
        }));
        return command;
    }

    private static int Import(Study study, string path, ParseResult asked)
    {
        if (Find(study, asked.GetRequiredValue(Area)) is not { } area)
            return Refusal.Of([$"The study has no area {asked.GetValue(Area)}. It has: {string.Join(", ", study.Areas.Select(a => a.Id))}."]);
        var culture = Culture(study);
        var own = SurveyContext.UsualUnit(culture);
        if (LengthText.Parse(asked.GetRequiredValue(Height), culture, own) is not { Ok: true, Value: { } height })
            return Refusal.Of([$"--height: {CellQuote(asked.GetValue(Height))} is not a height. Give one such as \"12 in\" or \"0.3 m\"."]);
        using var stream = File.OpenRead(path);
        var read = ReadingsCsv.Read(stream, culture, own);
        if (read is not { Ok: true, Value: { } grid })
            return Refusal.Of(read.Problems.Select(problem => $"{path}: {problem}"));
        var light = area.Light ?? new AreaLight();
        if (Begin(light, height, asked) is not { } begun)
            return Refusal.Of([$"--lux-of: there is no kind of lamp {CellQuote(asked.GetValue(Family))}. Known are: {string.Join(", ", NamedLuxFactors.All.Select(factor => factor.Name))}."]);
        var placed = ReadingPlaces.Into(begun, grid, light);
        if (placed.Value is not { } set) return Refusal.Of(placed.Problems.Select(problem => $"{path}: {problem}"));
        return Write(study, area with { Light = With(light, set) }, (set, asked.GetRequiredValue(Out)));
    }

    private static int Write(Study study, Area changed, (ReadingSet Set, string Path) result)
    {
        var written = StudyOutput.Write(study with { Areas = [.. study.Areas.Select(a => a.Id == changed.Id ? changed : a)] }, result.Path);
        if (written != ExitCode.Done) return written;
        var set = result.Set;
        Console.Out.WriteLine($"Set \"{set.Id}\" of {changed.Name}: {set.Values.Sum(row => row.Count(value => value is not null))} readings, {set.Rows.Count} rows of {set.Columns.Count}.");
        if (set.Unit != LightUnit.Micromoles && set.Conversion is null)
            Console.Out.WriteLine("Nothing says how these become photons: the set tells nothing about the crop's light yet. Give --lux-of.");
        return ExitCode.Done;
    }

    /// <summary>The set before its readings; null when the kind of lamp is not known.</summary>
    private static ReadingSet? Begin(AreaLight light, Length height, ParseResult asked)
    {
        var named = asked.GetValue(Family);
        var family = named is null ? null : NamedLuxFactors.All.FirstOrDefault(factor => factor.Name.Equals(named, StringComparison.OrdinalIgnoreCase));
        if (named is not null && family is null) return null;
        var id = asked.GetValue(Set) ?? new NewIds("readings", light.Readings.Select(set => set.Id)).Next();
        return new ReadingSet
        {
            Id = id, Height = height, Pattern = asked.GetValue(Pattern), Unit = asked.GetValue(Unit) ?? LightUnit.Micromoles, LitStep = asked.GetValue(Step),
            Conversion = family is null ? null : new(family.Factor.LuxPerMicromole, family.Uncertainty, new Provenance(family.Provenance.Kind, $"{family.Name}: {family.Provenance.Source}")),
        };
    }

    private static AreaLight With(AreaLight light, ReadingSet set) => light with
    {
        Readings = light.Readings.Any(old => old.Id == set.Id) ? [.. light.Readings.Select(old => old.Id == set.Id ? set : old)] : [.. light.Readings, set],
    };

    private static Area? Find(Study study, string area) =>
        study.Areas.FirstOrDefault(a => a.Id == area) ?? study.Areas.FirstOrDefault(a => a.Name.Equals(area, StringComparison.OrdinalIgnoreCase));

    private static CultureInfo Culture(Study study) => CultureInfo.GetCultureInfo(study.Site.Culture);

    private static string CellQuote(string? text) => $"\"{text}\"";
}
