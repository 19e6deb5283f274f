using System.CommandLine;
using System.Globalization;
using RetrofitCalc.Files.Photometry;

namespace RetrofitCalc.Cli;

/// <summary>import-photometry: what a photometric file holds, and the file into a study.</summary>
internal static class PhotometryCommand
{
    public static Command Make()
    {
        var file = new Argument<string>("photometry") { Description = "A photometric file in IES LM-63 format, of any edition." };
        var target = new LightFileTarget();
        var command = new Command("import-photometry", "Prints what a photometric file holds, and takes it into a study with --into.") { file };
        target.AddTo(command);
        command.SetAction(parsed =>
        {
            var path = parsed.GetRequiredValue(file);
            using var stream = File.OpenRead(path);
            var read = Lm63File.Read(stream);
            if (read.Value is not { } held) return Refusal.Of(read.Problems.Select(problem => $"{path}: {problem}"));
            Console.Out.WriteLine(Figures(held));
            return target.Take(parsed, (study, name) =>
            {
                var grown = StudyDistributions.Add(study, held, name ?? StudyDistributions.NameIn(held) ?? Path.GetFileNameWithoutExtension(path));
                return (grown, light => light with { Distribution = grown.Distributions[^1].Id });
            });
        });
        return command;
    }

    private static string Figures(PhotometricFile file)
    {
        var (light, table) = (file.Distribution, new TextTable());
        string Number(double? value, string unit) => value is { } known ? known.ToString("0.##", CultureInfo.InvariantCulture) + unit : "not known";
        table.Add("Form of IES LM-63", [file.Edition.ToString()[2..]]);
        table.Add("Name", [StudyDistributions.NameIn(file) ?? "not known"]);
        table.Add("Angles", [$"type {light.Type}, {light.VerticalDegrees.Count} vertical, {light.HorizontalDegrees.Count} horizontal"]);
        table.Add("Light", [Number(light.TotalFlux.Lumens, " lm")]);
        table.Add("Light of its lamps", [light.LampFlux is { } lamp ? Number(lamp.Lumens * light.LampCount, " lm") : "absolute photometry"]);
        table.Add("Efficiency", [Number(light.Efficiency, "")]);
        table.Add("Highest intensity", [Number(light.Candelas.Max(row => row.Max()), " cd")]);
        table.Add("Power", [Number(light.InputPower?.Watts, " W")]);
        table.Add("Light of a watt", [Number(light.LumensPerWatt, " lm/W")]);
        table.Add("Luminous part, width × length × height", [FormattableString.Invariant($"{light.Opening.WidthMetres:0.###} × {light.Opening.LengthMetres:0.###} × {light.Opening.HeightMetres:0.###} m")]);
        return string.Join(Environment.NewLine, [table.ToString().TrimEnd(), .. file.Notes.Select(note => $"Note: {note}")]);
    }
}
