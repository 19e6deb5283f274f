using System.Text.Json;
using RetrofitCalc.Engine.Safety;
using RetrofitCalc.Files.Safety;

namespace RetrofitCalc.Files.Tests.Safety;

/// <summary>Facts and expected rules stand in the rule file itself, written with the rules.</summary>
public class The_shipped_safety_rules
{
    private static readonly SafetyRuleBook Book = SafetyRuleFile.Load();
    private static readonly RuleEvaluator Evaluator = new(Book);
    private static readonly JsonElement Root = JsonDocument.Parse(SafetyRuleFile.ShippedText()).RootElement;

    public static IEnumerable<TheoryDataRow<string>> RuleIds() => Book.Rules.Select(rule => new TheoryDataRow<string>(rule.Id));

    public static IEnumerable<TheoryDataRow<int>> Samples() =>
        Root.GetProperty("samples").EnumerateArray().Select((sample, index) =>
            new TheoryDataRow<int>(index) { TestDisplayName = $"sample: {sample.GetProperty("name").GetString()}" });

    [Fact]
    public void are_as_many_as_the_file_announces()
    {
        var counts = Root.GetProperty("meta").GetProperty("counts");
        Assert.Equal(counts.GetProperty("rules").GetInt32(), Book.Rules.Count);
        Assert.Equal(counts.GetProperty("fields").GetInt32(), Book.Fields.Count);
        Assert.Equal(counts.GetProperty("checklist_items").GetInt32(), Book.Checklist.Sum(phase => phase.Items.Count));
        Assert.Equal(33, Book.Rules.Count(rule => rule.Severity == Engine.Results.NoticeSeverity.Stop));
    }

    [Theory, MemberData(nameof(RuleIds))]
    public void are_raised_by_the_facts_they_are_meant_for(string id)
    {
        var rule = Root.GetProperty("rules").EnumerateArray().Single(r => r.GetProperty("id").GetString() == id);
        Assert.Contains(id, Evaluator.Raised(Facts(rule.GetProperty("fires_on"))).Select(raised => raised.Id));
    }

    [Theory, MemberData(nameof(Samples))]
    public void raise_exactly_what_a_sample_survey_expects(int index)
    {
        var sample = Root.GetProperty("samples")[index];
        var expected = sample.GetProperty("fires").EnumerateArray().Select(id => id.GetString()!);
        Assert.Equal(expected.Order(), Evaluator.Raised(Facts(sample.GetProperty("survey"))).Select(rule => rule.Id).Order());
    }

    [Fact]
    public void name_only_sources_and_roles_that_the_file_explains()
    {
        Assert.All(Book.Rules, rule => Assert.All(rule.Sources, source => Assert.Contains(source, Book.Sources.Keys)));
        Assert.All(Book.Rules, rule => Assert.All(rule.WhoAnswers, role => Assert.Contains(role, Book.Roles.Keys)));
    }

    [Fact]
    public void are_linked_from_the_checklist_by_ids_that_exist()
    {
        var ids = Book.Rules.Select(rule => rule.Id).ToHashSet();
        Assert.All(Book.Checklist.SelectMany(phase => phase.Items), item => Assert.All(item.LinkedRules, id => Assert.Contains(id, ids)));
    }

    private static Dictionary<string, string> Facts(JsonElement facts) => facts.EnumerateObject().ToDictionary(
        fact => fact.Name, fact => fact.Value.ValueKind == JsonValueKind.String ? fact.Value.GetString()! : fact.Value.GetRawText());
}
