using System.CommandLine;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Spectra;
using RetrofitCalc.Files;
using RetrofitCalc.Files.Meters;
using RetrofitCalc.Files.Spectra;

namespace RetrofitCalc.Cli;

/// <summary>import-spectrum: what a spectrum tells, and the spectrum into a study.</summary>
internal static class SpectrumCommand
{
    public static Command Make()
    {
        var file = new Argument<string>("spectrum") { Description = "A spectrum as CSV or text table, or as IES TM-27 XML." };
        var column = new Option<int?>("--column") { Description = "Column of the values in a table, counted from 1; guessed when left out." };
        var unit = new Option<SpectrumUnit?>("--unit") { Description = "What the values of a table are; guessed from the heading when left out. Watts and photons are not the same." };
        var source = new Option<string?>("--source") { Description = "Where the spectrum comes from; unsourced when left out." };
        var target = new LightFileTarget();
        var command = new Command("import-spectrum", "Prints what a spectrum tells, and takes it into a study with --into.") { file, column, unit, source };
        target.AddTo(command);
        command.SetAction(parsed =>
        {
            var path = parsed.GetRequiredValue(file);
            var read = Read(path, (parsed.GetValue(column), parsed.GetValue(unit)), parsed.GetValue(source));
            if (read is not { Ok: true, Value: { } spectrum }) return Refusal.Of(read.Problems.Select(problem => $"{path}: {problem}"));
            var figures = SpectrumFigures.Of(spectrum.Spectrum, ShippedSpectra.Tables);
            Console.Out.WriteLine(SpectrumText.Of(figures, spectrum.Notes));
            return target.Take(parsed, (study, name) =>
            {
                var grown = StudySpectra.Add(study, spectrum.Spectrum, name ?? spectrum.Spectrum.Name);
                return (grown, light => light with { Spectrum = grown.Spectra[^1].Id });
            });
        });
        return command;
    }

    private static Parsed<ImportedSpectrum> Read(string path, (int? Column, SpectrumUnit? Unit) asked, string? source)
    {
        using var stream = File.OpenRead(path);
        if (IsXml(stream)) return Tm27File.Read(stream);
        var table = SpectrumCsv.Read(stream);
        if (table.Value is not { } rows) return new(null, table.Problems);
        if (SpectrumChoice.Guess(rows) is not { } guess) return Parsed.Bad<ImportedSpectrum>("The table has one column only. A spectrum has wavelengths and values.");
        if (asked.Column is { } number && (number < 1 || number > rows.Headings.Count || number - 1 == guess.Wavelength))
            return Parsed.Bad<ImportedSpectrum>($"--column must be 1 to {rows.Headings.Count}, and not {guess.Wavelength + 1}, the wavelengths.");
        var choice = asked.Column is { } column ? guess.WithValue(column - 1, rows) : guess;
        choice = choice with { Unit = asked.Unit ?? choice.Unit };
        Console.Out.WriteLine($"Read as: wavelengths in \"{rows.Headings[choice.Wavelength]}\", values in \"{rows.Headings[choice.Value]}\", {choice.Unit}.");
        return SpectrumBuild.Of(rows, choice, Path.GetFileNameWithoutExtension(path), source is null ? Provenance.None : new(EvidenceKind.Tested, source));
    }

    private static bool IsXml(FileStream stream)
    {
        var start = new byte[MeterFile.StartBytes];
        var read = stream.ReadAtLeast(start, start.Length, throwOnEndOfStream: false);
        stream.Position = 0;
        return MeterFile.IsXml(start.AsSpan(0, read));
    }
}
