using System.Text.Json;

namespace RetrofitCalc.Files.Safety;

/// <summary>A place in the rule file. Whatever is missing or of the wrong kind is reported with its path.</summary>
internal readonly record struct RuleNode(JsonElement Element, string Path)
{
    public RuleNode this[string name] => Find(name) ?? throw Wrong($"'{name}' is missing");

    public bool IsNull => Element.ValueKind == JsonValueKind.Null;

    public string Text => Element.ValueKind == JsonValueKind.String ? Element.GetString()! : throw Wrong("expected text");

    /// <summary>Text, or a number as written.</summary>
    public string Word => Element.ValueKind == JsonValueKind.Number ? Element.GetRawText() : Text;

    public bool Truth => Element.ValueKind is JsonValueKind.True or JsonValueKind.False ? Element.GetBoolean() : throw Wrong("expected true or false");

    public IReadOnlyList<string> Texts => [.. Items.Select(item => item.Text)];

    public IEnumerable<RuleNode> Items
    {
        get
        {
            var path = Path;
            return Element.ValueKind == JsonValueKind.Array
                ? Element.EnumerateArray().Select((item, index) => new RuleNode(item, $"{path}[{index}]"))
                : throw Wrong("expected a list");
        }
    }

    public IEnumerable<(string Name, RuleNode Node)> Members
    {
        get
        {
            var path = Path;
            return Element.ValueKind == JsonValueKind.Object
                ? Element.EnumerateObject().Select(member => (member.Name, new RuleNode(member.Value, $"{path}.{member.Name}")))
                : throw Wrong("expected an object");
        }
    }

    public RuleNode? Find(string name) => Element.ValueKind != JsonValueKind.Object ? throw Wrong("expected an object")
        : Element.TryGetProperty(name, out var found) ? new RuleNode(found, $"{Path}.{name}") : null;

    public string OneOf(params string[] words) =>
        words.Contains(Text) ? Text : throw Wrong($"'{Text}' is not one of {string.Join(", ", words)}");

    public FormatException Wrong(string what) => new($"{Path}: {what}.");
}
