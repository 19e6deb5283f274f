using System.CommandLine;
using System.Globalization;
using NodaTime;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files;
using RetrofitCalc.Files.Meters;
using RetrofitCalc.Files.Meters.Espi;
using RetrofitCalc.Files.Meters.Tables;

namespace RetrofitCalc.Cli;

/// <summary>What a caller says of a meter file where the guess would be wrong; null for the guess.</summary>
internal sealed record MeterChoices(int? Meter, string? Sheet, MeterUnit? Unit, StampMeaning? Stamps, StampClock? Clock, DateOrder? Dates)
{
    public MeterLayout On(MeterLayout guess) => guess with
    {
        Unit = Unit ?? guess.Unit, Stamps = Stamps ?? guess.Stamps, Clock = Clock ?? guess.Clock, Dates = Dates ?? guess.Dates,
    };
}

/// <summary>The options of a meter file.</summary>
internal sealed class MeterChoiceOptions
{
    private readonly Option<int?> _meter = new("--meter") { Description = "Which meter of the file, counted from 1, when it holds several." };
    private readonly Option<string?> _sheet = new("--sheet") { Description = "Name of the sheet of an XLSX file; the first when left out." };
    private readonly Option<MeterUnit?> _unit = new("--unit") { Description = "Unit of the values in a table." };
    private readonly Option<StampMeaning?> _stamps = new("--stamps") { Description = "Whether stamps in a table mark the start or the end of intervals." };
    private readonly Option<StampClock?> _clock = new("--clock") { Description = "The clock of stamps in a table." };
    private readonly Option<DateOrder?> _dates = new("--dates") { Description = "Order of day and month in a table." };

    public IEnumerable<Option> All => [_meter, _sheet, _unit, _stamps, _clock, _dates];

    public MeterChoices Of(ParseResult parsed) => new(parsed.GetValue(_meter), parsed.GetValue(_sheet), parsed.GetValue(_unit), parsed.GetValue(_stamps), parsed.GetValue(_clock), parsed.GetValue(_dates));
}

/// <summary>Reads a meter file of either kind; says on standard error why it cannot.</summary>
internal static class MeterInput
{
    public static MeterSource? Read(string path, Study study, MeterChoices choices, DateTimeZone zone)
    {
        using var stream = File.OpenRead(path);
        var start = new byte[MeterFile.StartBytes];
        var read = stream.ReadAtLeast(start, start.Length, throwOnEndOfStream: false);
        stream.Position = 0;
        return MeterFile.IsXml(start.AsSpan(0, read)) ? OfFeed(path, EspiFile.Read(stream), choices.Meter) : OfTable(path, stream, (study, choices), zone);
    }

    private static MeterSource? OfFeed(string path, Parsed<EspiContent> content, int? number)
    {
        if (content.Value is not { Meters.Count: > 0 } feed) return Refused(content.Problems.Select(problem => $"{path}: {problem}"));
        var listed = feed.Meters.Select((meter, i) => $"{i + 1,5}  {meter.Name}: {meter.About}{(meter.Refusal is { } why ? $" ({why})" : "")}");
        if (number is null && feed.Meters.Count > 1) return Refused([$"{path} holds {feed.Meters.Count} meters. Choose one with --meter and its number.", .. listed]);
        if (number is { } given && (given < 1 || given > feed.Meters.Count)) return Refused([$"{path} holds {feed.Meters.Count} meters; --meter must be 1 to {feed.Meters.Count}."]);
        var chosen = feed.Meters[(number ?? 1) - 1];
        return chosen.Refusal is { } refusal ? Refused([$"{path}: {chosen.Name} cannot be used. {refusal}"]) : chosen;
    }

    private static MeterSource? OfTable(string path, FileStream stream, (Study Study, MeterChoices Choices) asked, DateTimeZone zone)
    {
        var options = new MeterTableOptions(Path.GetFileName(path), CultureInfo.GetCultureInfo(asked.Study.Site.Culture), asked.Choices.Sheet);
        var sample = MeterTableFile.Look(stream, options.Culture, options.Sheet);
        if (sample.Value is not { } look) return Refused(sample.Problems.Select(problem => $"{path}: {problem}"));
        var layout = asked.Choices.On(look.Guess);
        Console.Out.WriteLine($"Read as: {layout.Unit} in {string.Join(", ", layout.ValueColumns.Take(3).Select(i => $"\"{look.Headings[i]}\""))}{(layout.IsDayPerRow ? " …, a day in each row" : "")}; \"{look.Headings[layout.StampColumn]}\" marks the {layout.Stamps.ToString().ToLowerInvariant()}; clock: {layout.Clock}.");
        stream.Position = 0;
        var source = MeterTableFile.Read(stream, options, layout, zone);
        return source.Value ?? Refused(source.Problems.Select(problem => $"{path}: {problem}"));
    }

    private static MeterSource? Refused(IEnumerable<string> reasons)
    {
        MeterCommands.Refuse(reasons);
        return null;
    }
}
