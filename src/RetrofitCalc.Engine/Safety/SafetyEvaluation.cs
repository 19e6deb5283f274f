using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Safety;

/// <summary>Notices the survey raises under the option asked for: the one the study names, else its first.</summary>
public static class SafetyEvaluation
{
    /// <summary>Evaluates all rules on every line, counted or not.</summary>
    /// <param name="study">The study.</param>
    /// <param name="rules">The rules.</param>
    /// <returns>One notice for each rule raised, with its lines: stops first, then as in the rule file.</returns>
    public static IReadOnlyList<SafetyNotice> Run(Study study, SafetyRuleBook rules)
    {
        var raisedBy = rules.Rules.ToDictionary(rule => rule.Id, _ => new List<string>());
        var raisedAtAll = new HashSet<string>();
        var evaluator = new RuleEvaluator(rules);
        foreach (var (facts, lines) in DistinctFacts(study))
            foreach (var rule in evaluator.Raised(facts))
            {
                raisedAtAll.Add(rule.Id);
                raisedBy[rule.Id].AddRange(lines);
            }
        var place = study.Lines.Select((line, index) => (line.Id, index)).ToDictionary(pair => pair.Id, pair => pair.index);
        return [.. rules.Rules.Where(rule => raisedAtAll.Contains(rule.Id)).OrderBy(rule => rule.Severity)
            .Select(rule => Notice(rule, [.. raisedBy[rule.Id].OrderBy(line => place[line])], study.Safety.Answers))];
    }

    /// <summary>Lines that say the same share one set of facts, so that rules are evaluated once for all of them.</summary>
    private static IEnumerable<(IReadOnlyDictionary<string, string> Facts, IReadOnlyList<string> Lines)> DistinctFacts(Study study)
    {
        var facts = new SafetyFacts(study);
        if (study.Lines.Count == 0) return [(facts.Of(null, null), [])];
        var chosen = study.Options.FirstOrDefault(option => option.Id == study.ChosenOption) ?? study.Options.FirstOrDefault();
        var measures = (chosen?.Measures ?? []).ToDictionary(measure => measure.Line, measure => measure.Measure);
        var ownFacts = study.Safety.Facts.Select(fact => fact.Line).ToHashSet();
        return study.Lines
            .Select(line => (Line: line, Measure: measures.GetValueOrDefault(line.Id)))
            .GroupBy(pair => Key(pair.Line, pair.Measure, ownFacts))
            .Select(same => (facts.Of(same.First().Line, same.First().Measure), (IReadOnlyList<string>)[.. same.Select(pair => pair.Line.Id)]));
    }

    /// <summary>A line stripped of what no rule looks at; a line with facts of its own stays apart.</summary>
    private static (SurveyLine, Measure?) Key(SurveyLine line, Measure? measure, HashSet<string?> ownFacts) => (line with
    {
        Id = ownFacts.Contains(line.Id) ? line.Id : "",
        Name = "",
        Note = "",
        LampsOut = null,
        LampsInstalled = null,
        BurnHours = null,
        Reading = null,
    }, measure);

    private static SafetyNotice Notice(SafetyRule rule, IReadOnlyList<string> lines, IReadOnlyList<NoticeAnswer> answers) => new(
        rule.Id, rule.Group, rule.Severity, rule.Notice, rule.Question, rule.WhoAnswers, rule.Sources, lines,
        [.. answers.Where(answer => answer.Rule == rule.Id && (answer.Line is null || lines.Contains(answer.Line)))]);
}
