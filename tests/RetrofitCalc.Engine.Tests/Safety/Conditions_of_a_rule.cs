using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Safety;

namespace RetrofitCalc.Engine.Tests.Safety;

public class Conditions_of_a_rule
{
    [Theory]
    [InlineData("eq", "b", true)]
    [InlineData("eq", "c", false)]
    [InlineData("ne", "c", true)]
    [InlineData("ne", "b", false)]
    [InlineData("in", "a b", true)]
    [InlineData("in", "a c", false)]
    [InlineData("not_in", "a c", true)]
    [InlineData("not_in", "a b", false)]
    [InlineData("unknown", "", false)]
    public void compare_words(string name, string values, bool expected) => Assert.Equal(expected, Holds(new Comparison("word", name, values.Split(' ')), "b"));

    [Theory]
    [InlineData("lt", "10", true)]
    [InlineData("lt", "9.5", false)]
    [InlineData("le", "9.5", true)]
    [InlineData("gt", "9.5", false)]
    [InlineData("ge", "9.5", true)]
    [InlineData("gt", "9", true)] // as numbers: as words 9.5 would stand before 10
    public void compare_numbers(string name, string value, bool expected) => Assert.Equal(expected, Holds(new Comparison("number", name, [value]), "9.5"));

    [Theory, InlineData("gt_field", "5", true), InlineData("gt_field", "12", false), InlineData("lt_field", "12", true), InlineData("lt_field", "5", false)]
    public void compare_two_facts(string name, string other, bool expected) =>
        Assert.Equal(expected, Raised(new Comparison("number", name, ["other"]), new() { ["number"] = "9.5", ["other"] = other }));

    [Theory]
    [InlineData("is_true", "true", true)]
    [InlineData("is_true", "false", false)]
    [InlineData("is_false", "false", true)]
    [InlineData("is_false", "true", false)]
    [InlineData("not_true", "false", true)]
    [InlineData("not_true", "true", false)]
    public void ask_yes_or_no(string name, string value, bool expected) => Assert.Equal(expected, Holds(new Comparison("truth", name, []), value));

    [Theory]
    [InlineData("eq", false), InlineData("ne", false), InlineData("in", false), InlineData("not_in", false)]
    [InlineData("lt", false), InlineData("le", false), InlineData("gt", false), InlineData("ge", false)]
    [InlineData("gt_field", false), InlineData("lt_field", false), InlineData("is_true", false), InlineData("is_false", false)]
    [InlineData("unknown", true), InlineData("not_true", true)]
    public void are_false_for_a_missing_fact_unless_they_ask_for_it(string name, bool expected) =>
        Assert.Equal(expected, Raised(new Comparison("nothing", name, ["1"]), []));

    [Theory, InlineData("true", "true", true, true), InlineData("true", "false", false, true), InlineData("false", "false", false, false)]
    public void are_joined_by_all_and_any(string one, string other, bool all, bool any)
    {
        SafetyCondition[] parts = [new Comparison("one", "is_true", []), new Comparison("other", "is_true", [])];
        Dictionary<string, string> facts = new() { ["one"] = one, ["other"] = other };
        Assert.Equal((all, any), (Raised(new AllOf(parts), facts), Raised(new AnyOf(parts), facts)));
    }

    [Fact]
    public void find_a_missing_word_filled_in_as_unknown_where_the_field_has_that_word()
    {
        Assert.True(Raised(new Comparison("method", "eq", ["unknown"]), []));
        Assert.False(Raised(new Comparison("plain", "eq", ["unknown"]), []));
    }

    [Fact]
    public void find_the_default_of_a_field_before_unknown() => Assert.True(Raised(new Comparison("mark", "eq", ["not_checked"]), []));

    [Theory, InlineData("count", "many"), InlineData("method", "imagined"), InlineData("flag", "perhaps")]
    public void take_a_value_that_does_not_fit_its_field_as_missing(string field, string value)
    {
        var missing = field == "method" ? new Comparison(field, "eq", ["unknown"]) : new Comparison(field, "unknown", []);
        Assert.True(Raised(missing, new() { [field] = value }));
    }

    [Fact]
    public void stop_at_an_operator_that_does_not_exist() =>
        Assert.Throws<InvalidOperationException>(() => Raised(new Comparison("word", "like", ["b"]), new() { ["word"] = "b" }));

    private static bool Holds(Comparison comparison, string value) => Raised(comparison, new() { [comparison.Field] = value });

    private static bool Raised(SafetyCondition condition, Dictionary<string, string> facts) => new RuleEvaluator(new SafetyRuleBook
    {
        Fields =
        [
            new("method", "enum", ["instant", "unknown"], ""), new("plain", "enum", ["a", "b"], ""),
            new("mark", "enum", ["yes", "not_checked", "unknown"], ""), new("count", "number", [], ""), new("flag", "bool", [], ""),
        ],
        Defaults = new Dictionary<string, string> { ["mark"] = "not_checked" },
        Rules = [new() { Id = "R", Group = "", Severity = NoticeSeverity.Note, When = condition, Notice = "", Question = "" }],
    }).Raised(facts).Count == 1;
}
