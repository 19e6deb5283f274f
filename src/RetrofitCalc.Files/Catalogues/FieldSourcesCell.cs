using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using RetrofitCalc.Files.Surveys;

namespace RetrofitCalc.Files.Catalogues;

/// <summary>Sources of single values, one to a line: Price = invented: Typical price, replace it by an offer.</summary>
internal sealed partial class FieldSourcesCell : ICell
{
    private const string FromMemory = ", from memory";

    public string Write(JsonNode value, CultureInfo culture) => string.Join('\n', value.AsObject().Select(pair =>
        $"{pair.Key} = {pair.Value!["kind"]}{(pair.Value["fromMemory"]?.GetValue<bool>() == true ? FromMemory : "")}: {EscapedLine.Of((string)pair.Value["source"]!)}"));

    public Parsed<JsonNode> Read(string text, CultureInfo culture)
    {
        var sources = new JsonObject();
        foreach (var line in text.Split(['\n', '\r'], StringSplitOptions.RemoveEmptyEntries))
        {
            var match = Form().Match(line);
            if (!match.Success || sources.ContainsKey(match.Groups["name"].Value))
                return Parsed.Bad<JsonNode>($"{CellText.Quote(line)} is not understood. Write each on its own line, like: Price = invented: Typical price, replace it by an offer");
            sources[match.Groups["name"].Value] = new JsonObject
            {
                ["kind"] = match.Groups["kind"].Value,
                ["source"] = EscapedLine.Read(match.Groups["source"].Value),
                ["fromMemory"] = match.Groups["memory"].Success,
            };
        }
        return Parsed.Good<JsonNode>(sources);
    }

    [GeneratedRegex("^(?<name>[A-Za-z]+) = (?<kind>[a-z]+)(?<memory>, from memory)?:(?: (?<source>.*))?$")]
    private static partial Regex Form();
}

/// <summary>Text on one line: line breaks are written \n, and \ is doubled.</summary>
internal static class EscapedLine
{
    public static string Of(string text) => text.Replace("\\", "\\\\").Replace("\n", "\\n").Replace("\r", "\\r");

    public static string Read(string line) => Regex.Replace(line, @"\\(.)", m => m.Groups[1].Value switch { "n" => "\n", "r" => "\r", var other => other });
}
