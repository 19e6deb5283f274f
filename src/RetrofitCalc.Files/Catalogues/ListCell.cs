using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using RetrofitCalc.Files.Surveys;
using RetrofitCalc.Files.Typing;

namespace RetrofitCalc.Files.Catalogues;

/// <summary>Several values in one cell, one to a line.</summary>
internal abstract class ListCell(Regex pattern, string example) : ICell
{
    public string Write(JsonNode value, CultureInfo culture) =>
        string.Join('\n', value.AsArray().Select(item => WriteOne(item!.AsObject(), culture)));

    public Parsed<JsonNode> Read(string text, CultureInfo culture)
    {
        var items = new JsonArray();
        foreach (var line in text.Split(['\n', '\r'], StringSplitOptions.RemoveEmptyEntries))
        {
            var match = pattern.Match(line.Trim());
            if (!match.Success || ReadOne(match, culture) is not { } item)
                return Parsed.Bad<JsonNode>($"{CellText.Quote(line)} is not understood. Write each on its own line, like: {example}");
            items.Add(item);
        }
        return Parsed.Good<JsonNode>(items);
    }

    protected abstract string WriteOne(JsonObject item, CultureInfo culture);

    /// <summary>The item; null when a number in it cannot be read.</summary>
    protected abstract JsonObject? ReadOne(Match match, CultureInfo culture);

    protected static string Number(JsonNode? value, CultureInfo culture) => NumberText.Write((double)value!, culture);

    protected static double? Number(Group text, CultureInfo culture) => NumberText.Parse(text.Value, culture).Value;
}
