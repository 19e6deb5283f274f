using RetrofitCalc.Engine.Safety;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Web.Features.Safety;

/// <summary>A fact some rule hangs on, and where it is missing or was given by hand.</summary>
/// <param name="Lines">Ids of the lines that miss it or have a value of their own.</param>
/// <param name="Value">Value for the whole site; null when not known.</param>
/// <param name="Missing">Whether a rule still waits for it.</param>
public sealed record FactRow(SafetyField Field, IReadOnlyList<string> Lines, string? Value, bool Missing)
{
    /// <summary>Facts the survey, the catalogue and the options give; they are asked for there.</summary>
    private static readonly HashSet<string> AskedElsewhere =
    [
        "lamp_type", "lamp_base", "ballast_type", "start_method", "ballast_year", "supply_volts", "environment", "emergency_role",
        "fixture_count", "lamps_per_fixture", "lamps_removed", "option", "tube_feed", "tube_volts_min", "tube_volts_max",
        "tube_location", "tube_pf", "tube_thd_pct", "planned_install_date", "today",
    ];

    public bool Elsewhere => AskedElsewhere.Contains(Field.Name);

    public string? ValueOn(Study study, string line) =>
        study.Safety.Facts.LastOrDefault(f => f.Line == line && f.Field == Field.Name)?.Value;

    /// <summary>Missing facts first, those of the heaviest rules before the others; then what was given by hand.</summary>
    public static IReadOnlyList<FactRow> Of(Study study, SafetyRuleBook rules)
    {
        var asked = AskedBy(study, rules);
        var given = study.Safety.Facts.Select(f => f.Field).ToHashSet();
        var fields = asked.Keys.Concat(rules.Fields.Where(f => given.Contains(f.Name) && !asked.ContainsKey(f)));
        return [.. fields.Select(field => Row(study, field, asked.GetValueOrDefault(field)))];
    }

    private static FactRow Row(Study study, SafetyField field, List<string>? missing)
    {
        var own = study.Safety.Facts.Where(f => f.Field == field.Name).ToList();
        var lines = study.Lines.Select(l => l.Id).Where(id => missing?.Contains(id) is true || own.Any(f => f.Line == id));
        return new FactRow(field, [.. lines], own.LastOrDefault(f => f.Line is null)?.Value, missing is not null);
    }

    private static Dictionary<SafetyField, List<string>> AskedBy(Study study, SafetyRuleBook rules)
    {
        var (facts, evaluator) = (new SafetyFacts(study), new RuleEvaluator(rules));
        var chosen = study.Options.FirstOrDefault(o => o.Id == study.ChosenOption) ?? study.Options.FirstOrDefault();
        var measures = (chosen?.Measures ?? []).ToDictionary(m => m.Line, m => m.Measure);
        var asked = new Dictionary<SafetyField, List<string>>();
        foreach (var line in study.Lines)
            foreach (var field in evaluator.StillAsked(facts.Of(line, measures.GetValueOrDefault(line.Id))))
                (asked.TryGetValue(field, out var lines) ? lines : asked[field] = []).Add(line.Id);
        return asked;
    }
}
