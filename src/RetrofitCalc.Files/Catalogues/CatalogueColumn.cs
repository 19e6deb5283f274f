using System.Globalization;
using System.Text.Json.Nodes;

namespace RetrofitCalc.Files.Catalogues;

/// <summary>One column: its heading, where its value stands in the entry's JSON, and how it is written as a cell.</summary>
internal sealed record CatalogueColumn(string Heading, IReadOnlyList<string> Path, ICell Cell)
{
    public string Write(JsonObject entry, CultureInfo culture)
    {
        JsonNode? at = entry;
        foreach (var step in Path) at = at?[step];
        return at is null ? "" : Cell.Write(at, culture);
    }

    /// <summary>Puts a value where it belongs, making the objects on the way.</summary>
    public void Put(JsonObject entry, JsonNode value)
    {
        foreach (var step in Path.SkipLast(1))
        {
            if (entry[step] is null) entry[step] = new JsonObject();
            entry = entry[step]!.AsObject();
        }
        entry[Path[^1]] = value;
    }
}

/// <summary>How a JSON value is written in a cell and read back.</summary>
internal interface ICell
{
    string Write(JsonNode value, CultureInfo culture);

    /// <param name="text">Not blank.</param>
    /// <param name="culture">How its writer types numbers.</param>
    Parsed<JsonNode> Read(string text, CultureInfo culture);
}
