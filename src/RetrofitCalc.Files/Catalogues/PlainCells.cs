using System.Globalization;
using System.Text.Json.Nodes;
using RetrofitCalc.Files.Surveys;
using RetrofitCalc.Files.Typing;

namespace RetrofitCalc.Files.Catalogues;

/// <summary>Free text.</summary>
internal sealed class TextCell : ICell
{
    public string Write(JsonNode value, CultureInfo culture) => (string)value!;

    public Parsed<JsonNode> Read(string text, CultureInfo culture) => Parsed.Good<JsonNode>(JsonValue.Create(text));
}

/// <summary>A number with the decimal mark of the culture.</summary>
internal sealed class NumberCell : ICell
{
    public string Write(JsonNode value, CultureInfo culture) => NumberText.Write((double)value, culture);

    public Parsed<JsonNode> Read(string text, CultureInfo culture)
    {
        var number = NumberText.Parse(text, culture);
        return number.Value is { } value ? Parsed.Good<JsonNode>(JsonValue.Create(value)) : new Parsed<JsonNode>(null, number.Problems);
    }
}

/// <summary>Yes or no.</summary>
internal sealed class YesNoCell : ICell
{
    public string Write(JsonNode value, CultureInfo culture) => (bool)value ? "yes" : "no";

    public Parsed<JsonNode> Read(string text, CultureInfo culture) => text.Trim().ToLowerInvariant() switch
    {
        "yes" or "true" => Parsed.Good<JsonNode>(JsonValue.Create(true)),
        "no" or "false" => Parsed.Good<JsonNode>(JsonValue.Create(false)),
        _ => Parsed.Bad<JsonNode>($"{CellText.Quote(text)} is neither yes nor no."),
    };
}

/// <summary>A word of a fixed list.</summary>
internal sealed class WordCell(IReadOnlyList<string> words) : ICell
{
    public IReadOnlyList<string> Words => words;

    public string Write(JsonNode value, CultureInfo culture) => (string)value!;

    public Parsed<JsonNode> Read(string text, CultureInfo culture)
    {
        var word = words.FirstOrDefault(w => string.Equals(w, text.Trim(), StringComparison.OrdinalIgnoreCase));
        return word is null
            ? Parsed.Bad<JsonNode>($"{CellText.Quote(text)} is none of: {string.Join(", ", words)}.")
            : Parsed.Good<JsonNode>(JsonValue.Create(word));
    }
}
