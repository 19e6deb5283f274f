using System.Globalization;

namespace RetrofitCalc.Engine.Safety;

/// <summary>Decides which rules a set of facts raises.</summary>
/// <remarks>
/// A missing fact makes comparisons false, but "unknown" and "not_true" true. Before that, missing words are filled in:
/// with the rule book's default, else with "unknown" where the field has that word. A value that does not fit its field
/// (a word outside the list, a number that is none) counts as missing, so that it raises its question.
/// </remarks>
public sealed class RuleEvaluator
{
    private readonly SafetyRuleBook _rules;
    private readonly Dictionary<string, SafetyField> _fields;
    private readonly Dictionary<string, string> _filledIn;

    /// <summary>Prepares the rules.</summary>
    /// <param name="rules">The rules.</param>
    public RuleEvaluator(SafetyRuleBook rules)
    {
        _rules = rules;
        _fields = rules.Fields.ToDictionary(field => field.Name);
        _filledIn = rules.Fields.Where(field => field.Values.Contains("unknown")).ToDictionary(field => field.Name, _ => "unknown");
        foreach (var (field, value) in rules.Defaults) _filledIn[field] = value;
    }

    /// <summary>Rules raised, in file order.</summary>
    /// <param name="facts">Facts by field name; numbers with a point, true or false in lower case.</param>
    /// <exception cref="InvalidOperationException">A rule uses an operator that does not exist.</exception>
    public IReadOnlyList<SafetyRule> Raised(IReadOnlyDictionary<string, string> facts)
    {
        var complete = new Dictionary<string, string>(_filledIn);
        foreach (var (field, value) in facts)
            if (Fits(field, value)) complete[field] = value;
        return [.. _rules.Rules.Where(rule => Holds(rule.When, complete))];
    }

    /// <summary>Facts nobody has given on which a rule still hangs, those of the heaviest rules first.</summary>
    /// <param name="facts">Facts by field name.</param>
    /// <remarks>A rule hangs on a missing fact when it could hold for some value of all that is missing. "unknown" is no answer.</remarks>
    public IReadOnlyList<SafetyField> StillAsked(IReadOnlyDictionary<string, string> facts)
    {
        var given = facts.Where(fact => fact.Value != "unknown" && Fits(fact.Key, fact.Value)).ToDictionary();
        var asked = _rules.Rules.OrderBy(rule => rule.Severity).Where(rule => CouldHold(rule.When, given))
            .SelectMany(rule => FieldsOf(rule.When)).Distinct().Where(field => !given.ContainsKey(field));
        return [.. asked.Select(_fields.GetValueOrDefault).OfType<SafetyField>()];
    }

    private static bool CouldHold(SafetyCondition condition, Dictionary<string, string> given) => condition switch
    {
        AllOf all => all.Parts.All(part => CouldHold(part, given)),
        AnyOf any => any.Parts.Any(part => CouldHold(part, given)),
        _ => !FieldsOf(condition).All(given.ContainsKey) || Holds(condition, given),
    };

    private static IEnumerable<string> FieldsOf(SafetyCondition condition) => condition switch
    {
        AllOf all => all.Parts.SelectMany(FieldsOf),
        AnyOf any => any.Parts.SelectMany(FieldsOf),
        Comparison { Operator: "gt_field" or "lt_field" } two => [two.Field, two.Values[0]],
        Comparison one => [one.Field],
        _ => [],
    };

    private bool Fits(string field, string value) => !_fields.TryGetValue(field, out var known) || known.Type switch
    {
        "enum" => known.Values.Contains(value),
        "bool" => value is "true" or "false",
        "number" => Number(value) is not null,
        _ => true,
    };

    private static bool Holds(SafetyCondition condition, Dictionary<string, string> facts) => condition switch
    {
        AllOf all => all.Parts.All(part => Holds(part, facts)),
        AnyOf any => any.Parts.Any(part => Holds(part, facts)),
        Comparison comparison => Holds(comparison, facts.GetValueOrDefault(comparison.Field), facts),
        _ => throw new InvalidOperationException($"Conditions of kind {condition.GetType().Name} do not exist."),
    };

    private static bool Holds(Comparison comparison, string? value, Dictionary<string, string> facts) => comparison.Operator switch
    {
        "unknown" => value is null,
        "not_true" => value != "true",
        "is_true" => value == "true",
        "is_false" => value == "false",
        "eq" => value is not null && value == comparison.Values[0],
        "ne" => value is not null && value != comparison.Values[0],
        "in" => value is not null && comparison.Values.Contains(value),
        "not_in" => value is not null && !comparison.Values.Contains(value),
        "lt" => Order(value, comparison.Values[0]) < 0,
        "le" => Order(value, comparison.Values[0]) <= 0,
        "gt" => Order(value, comparison.Values[0]) > 0,
        "ge" => Order(value, comparison.Values[0]) >= 0,
        "gt_field" => Order(value, facts.GetValueOrDefault(comparison.Values[0])) > 0,
        "lt_field" => Order(value, facts.GetValueOrDefault(comparison.Values[0])) < 0,
        _ => throw new InvalidOperationException($"The operator {comparison.Operator} does not exist."),
    };

    /// <summary>Below, at or above zero like the two numbers; null, and so neither, when one is missing.</summary>
    private static int? Order(string? left, string? right) =>
        Number(left) is { } one && Number(right) is { } other ? one.CompareTo(other) : null;

    private static double? Number(string? text) =>
        double.TryParse(text, NumberStyles.Float, NumberFormatInfo.InvariantInfo, out var number) ? number : null;
}
