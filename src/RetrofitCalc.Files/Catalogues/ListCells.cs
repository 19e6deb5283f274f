using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace RetrofitCalc.Files.Catalogues;

/// <summary>Rated lives of a lamp: 3 h per start, instant: 24000 h.</summary>
internal sealed partial class LampLivesCell() : ListCell(Form(), "3 h per start, instant: 24000 h")
{
    protected override string WriteOne(JsonObject item, CultureInfo culture) =>
        $"{Number(item["hoursPerStart"], culture)} h per start{(item["startMethod"] is { } start ? $", {start}" : "")}: {Number(item["life"], culture)} h";

    protected override JsonObject? ReadOne(Match match, CultureInfo culture)
    {
        if (Number(match.Groups["cycle"], culture) is not { } cycle || Number(match.Groups["life"], culture) is not { } life) return null;
        var item = new JsonObject { ["hoursPerStart"] = cycle, ["life"] = life };
        if (match.Groups["start"].Success) item["startMethod"] = match.Groups["start"].Value.ToLowerInvariant();
        return item;
    }

    [GeneratedRegex("^(?<cycle>.+?) h per start(, (?<start>instant|rapid|programmed|preheat))?: (?<life>.+?) h$", RegexOptions.IgnoreCase)]
    private static partial Regex Form();
}

/// <summary>Ballasts of a set-up and the lamps each drives: f32t8-2-is drives 2; a ballast nobody has seen is "unknown".</summary>
internal sealed partial class BallastsCell() : ListCell(Form(), "f32t8-2-is drives 2")
{
    private const string Unknown = "unknown";

    protected override string WriteOne(JsonObject item, CultureInfo culture) => $"{(string?)item["ballast"] ?? Unknown} drives {(int)item["lampsDriven"]!}";

    protected override JsonObject? ReadOne(Match match, CultureInfo culture)
    {
        if (!int.TryParse(match.Groups["lamps"].Value, CultureInfo.InvariantCulture, out var lamps)) return null;
        var item = new JsonObject { ["lampsDriven"] = lamps };
        if (match.Groups["id"].Value != Unknown) item["ballast"] = match.Groups["id"].Value;
        return item;
    }

    [GeneratedRegex("^(?<id>.+) drives (?<lamps>[0-9]+)$")]
    private static partial Regex Form();
}

/// <summary>Lit steps: one of three lamps: ballast 1, 2: 58 W. Ballasts are counted from 1 here, as people do.</summary>
internal sealed partial class LitStepsCell() : ListCell(Form(), "two of four lamps: ballast 1: 58 W")
{
    protected override string WriteOne(JsonObject item, CultureInfo culture)
    {
        var ballasts = string.Join(", ", item["ballastIndexes"]!.AsArray().Select(i => (int)i! + 1));
        return $"{EscapedLine.Of((string)item["name"]!)}: ballast {ballasts}{(item["testedPower"] is { } power ? $": {Number(power, culture)} W" : "")}";
    }

    protected override JsonObject? ReadOne(Match match, CultureInfo culture)
    {
        var ballasts = match.Groups["ballast"].Captures.Select(c => int.TryParse(c.Value, CultureInfo.InvariantCulture, out var i) ? i - 1 : -1).ToList();
        if (ballasts.Any(i => i < 0)) return null;
        var item = new JsonObject
        {
            ["name"] = EscapedLine.Read(match.Groups["name"].Value),
            ["ballastIndexes"] = new JsonArray([.. ballasts.Select(i => (JsonNode)JsonValue.Create(i))]),
        };
        if (!match.Groups["power"].Success) return item;
        if (Number(match.Groups["power"], culture) is not { } power) return null;
        item["testedPower"] = power;
        return item;
    }

    [GeneratedRegex("^(?<name>.*): ballast ?(?:(?<ballast>[0-9]+)(?:, )?)*(?:: (?<power>[^:]+) W)?$")]
    private static partial Regex Form();
}
