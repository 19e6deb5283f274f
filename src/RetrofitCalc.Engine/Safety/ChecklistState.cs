using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Safety;

/// <summary>Where one checklist item stands.</summary>
/// <param name="Item">The item.</param>
/// <param name="Applies">Whether it applies here.</param>
/// <param name="Reason">Why it applies, or why not.</param>
/// <param name="Answer">Who answered it, and when; null while open.</param>
public sealed record ChecklistItemState(ChecklistItem Item, bool Applies, string Reason, ChecklistAnswer? Answer);

/// <summary>The items of one phase.</summary>
/// <param name="Phase">Name of the phase.</param>
/// <param name="Items">Its items.</param>
public sealed record ChecklistPhaseState(string Phase, IReadOnlyList<ChecklistItemState> Items);

/// <summary>The checklist of a study. Items that do not apply are kept and say why; none is answered in advance.</summary>
public static class ChecklistState
{
    /// <summary>Works out the state of every item.</summary>
    /// <param name="study">The study.</param>
    /// <param name="rules">The rules.</param>
    /// <param name="notices">Notices the study raises.</param>
    public static IReadOnlyList<ChecklistPhaseState> Of(Study study, SafetyRuleBook rules, IReadOnlyList<SafetyNotice> notices)
    {
        var raised = notices.Select(notice => notice.Rule).ToHashSet();
        return [.. rules.Checklist.Select(phase => new ChecklistPhaseState(phase.Phase,
            [.. phase.Items.Select(item => State(item, raised, study.Safety.Checklist.LastOrDefault(a => a.Item == item.Id)))]))];
    }

    private static ChecklistItemState State(ChecklistItem item, HashSet<string> raised, ChecklistAnswer? answer)
    {
        var linked = item.LinkedRules.Where(raised.Contains).ToList();
        var reason = (item.Always, linked.Count, item.LinkedRules.Count) switch
        {
            (true, _, _) => "Applies to every conversion.",
            (_, > 0, _) => $"Applies because of {Names(linked)}.",
            (_, _, 0) => "Does not apply: no notice of this survey asks for it.",
            _ => $"Does not apply: this survey does not raise {Names(item.LinkedRules)}.",
        };
        return new ChecklistItemState(item, item.Always || linked.Count > 0, reason, answer);
    }

    private static string Names(IReadOnlyList<string> rules) =>
        rules.Count == 1 ? $"notice {rules[0]}" : $"notices {string.Join(", ", rules)}";
}
