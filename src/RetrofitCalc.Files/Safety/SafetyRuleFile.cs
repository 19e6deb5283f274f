using System.Text;
using System.Text.Json;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Safety;

namespace RetrofitCalc.Files.Safety;

/// <summary>The rule file: data in, a rule book out, or one exception that names the place of the first mistake.</summary>
public static class SafetyRuleFile
{
    private const string Resource = "RetrofitCalc.Files.Safety.safety-rules.json";

    private static readonly Lazy<SafetyRuleBook> Shipped = new(() => Read(ShippedText()));

    /// <summary>The rules shipped with the program; read once.</summary>
    public static SafetyRuleBook Load() => Shipped.Value;

    /// <summary>The shipped file itself.</summary>
    public static string ShippedText()
    {
        using var reader = new StreamReader(typeof(SafetyRuleFile).Assembly.GetManifestResourceStream(Resource)!, Encoding.UTF8);
        return reader.ReadToEnd();
    }

    /// <summary>Reads a rule file.</summary>
    /// <exception cref="FormatException">Not JSON, or something in it is missing or wrong; the message names the path.</exception>
    public static SafetyRuleBook Read(string json)
    {
        using var document = Parse(json);
        var root = new RuleNode(document.RootElement, "$");
        var fields = root["fields"].Items.Select(Field).ToList();
        var conditions = new RuleConditions([.. fields.Select(field => field.Name)]);
        return new SafetyRuleBook
        {
            Fields = fields,
            Rules = [.. root["rules"].Items.Select(node => Rule(node, conditions))],
            Defaults = root["defaults_if_missing"].Members.ToDictionary(m => m.Name, m => m.Node.Text),
            Roles = root["roles"].Members.ToDictionary(m => m.Name, m => m.Node.Text),
            Sources = root["sources"].Members.ToDictionary(m => m.Name, m => new SafetySource(m.Node["citation"].Text, m.Node["status"].Text)),
            Checklist = [.. root["checklist"].Items.Select(p => new ChecklistPhase(p["phase"].Text, [.. p["items"].Items.Select(Item)]))],
            PhaseOutDates = [.. root["phase_out_dates"].Items.Select(PhaseOut)],
            Disclaimer = root["meta"]["disclaimer"].Text,
        };
    }

    private static JsonDocument Parse(string json)
    {
        try
        {
            return JsonDocument.Parse(json);
        }
        catch (JsonException problem)
        {
            throw new FormatException($"Line {problem.LineNumber + 1}: this is not JSON.", problem);
        }
    }

    private static SafetyField Field(RuleNode node) => new(
        node["name"].Text,
        node["type"].OneOf("enum", "bool", "number", "text", "date"),
        node["values"].IsNull ? [] : node["values"].Texts,
        node["meaning"].Text);

    private static SafetyRule Rule(RuleNode node, RuleConditions conditions) => new()
    {
        Id = node["id"].Text,
        Group = node["group"].Text,
        Severity = node["severity"].OneOf("stop", "warn", "note") switch
        {
            "stop" => NoticeSeverity.Stop,
            "warn" => NoticeSeverity.Warn,
            _ => NoticeSeverity.Note,
        },
        When = conditions.Read(node["when"]),
        Notice = node["notice"].Text,
        Question = node["question"].Text,
        WhoAnswers = node["who_answers"].Texts,
        Sources = node["sources"].Texts,
        Confidence = node["confidence"].Text,
    };

    private static ChecklistItem Item(RuleNode node) => new(
        node["id"].Text, node["text"].Text, node["signed_by"].Text, node["evidence"].Text, node["always"].Truth, node["linked_rules"].Texts);

    private static PhaseOutDate PhaseOut(RuleNode node) => new(
        node["place"].Text, node["what"].Text, node["date"].IsNull ? "" : node["date"].Text, node["effect"].Text, node["status"].Text, node["note"].Text);
}
