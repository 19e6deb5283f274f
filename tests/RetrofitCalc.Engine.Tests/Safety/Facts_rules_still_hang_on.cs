using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Safety;

namespace RetrofitCalc.Engine.Tests.Safety;

/// <summary>A fact is asked for as long as a rule could still hold for some value of it.</summary>
public class Facts_rules_still_hang_on
{
    private static readonly SafetyRuleBook Rules = new()
    {
        Fields =
        [
            new("wet", "bool", [], "Hosed"), new("year", "number", [], "Year"), new("limit", "number", [], "Limit"),
            new("holder", "enum", ["joined", "separate", "unknown"], "Holder"), new("alone", "bool", [], "No rule asks"),
        ],
        Rules =
        [
            Rule("note", NoticeSeverity.Note, new AnyOf([new Comparison("year", "gt_field", ["limit"])])),
            Rule("stop", NoticeSeverity.Stop, new AllOf([new Comparison("wet", "is_true", []), new Comparison("holder", "eq", ["joined"])])),
        ],
    };

    [Fact]
    public void are_all_that_rules_name_when_nothing_is_given_stops_first() => Assert.Equal(["wet", "holder", "year", "limit"], Asked([]));

    [Fact]
    public void leave_out_a_rule_that_a_given_fact_rules_out() => Assert.Equal(["year", "limit"], Asked(new() { ["wet"] = "false" }));

    [Fact]
    public void keep_the_other_facts_of_a_rule_that_may_still_hold() => Assert.Equal(["holder", "year", "limit"], Asked(new() { ["wet"] = "true" }));

    [Fact]
    public void count_unknown_as_missing() => Assert.Contains("holder", Asked(new() { ["holder"] = "unknown" }));

    [Fact]
    public void count_a_value_that_does_not_fit_as_missing() => Assert.Contains("year", Asked(new() { ["year"] = "old", ["limit"] = "3" }));

    [Fact]
    public void need_both_sides_of_a_comparison_of_two_facts()
    {
        Assert.Contains("limit", Asked(new() { ["year"] = "5" }));
        Assert.DoesNotContain("limit", Asked(new() { ["year"] = "5", ["limit"] = "9" }));
    }

    private static IEnumerable<string> Asked(Dictionary<string, string> facts) => new RuleEvaluator(Rules).StillAsked(facts).Select(f => f.Name);

    private static SafetyRule Rule(string id, NoticeSeverity severity, SafetyCondition when) =>
        new() { Id = id, Group = "Group", Severity = severity, When = when, Notice = "Notice", Question = "Question?" };
}
