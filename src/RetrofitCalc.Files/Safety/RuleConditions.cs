using RetrofitCalc.Engine.Safety;

namespace RetrofitCalc.Files.Safety;

/// <summary>Reads conditions, checking that every field and operator exists.</summary>
internal sealed class RuleConditions(HashSet<string> fields)
{
    private static readonly string[] WithoutValue = ["unknown", "is_true", "is_false", "not_true"];
    private static readonly string[] WithList = ["in", "not_in"];
    private static readonly string[] WithField = ["gt_field", "lt_field"];
    private static readonly string[] WithValue = ["eq", "ne", "lt", "le", "gt", "ge"];

    public SafetyCondition Read(RuleNode node)
    {
        if (node.Find("all") is { } all) return new AllOf([.. all.Items.Select(Read)]);
        if (node.Find("any") is { } any) return new AnyOf([.. any.Items.Select(Read)]);
        var name = node["op"].OneOf([.. WithoutValue, .. WithList, .. WithField, .. WithValue]);
        return new Comparison(Field(node["field"]), name, Values(node, name));
    }

    private IReadOnlyList<string> Values(RuleNode node, string name)
    {
        if (WithoutValue.Contains(name)) return [];
        var value = node["value"];
        if (WithList.Contains(name)) return value.Texts;
        return [WithField.Contains(name) ? Field(value) : value.Word];
    }

    private string Field(RuleNode node) =>
        fields.Contains(node.Text) ? node.Text : throw node.Wrong($"'{node.Text}' is not among the fields");
}
