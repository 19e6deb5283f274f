using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Safety;

namespace RetrofitCalc.Web.Features.Survey.Grid;

/// <summary>Open notices about a line's emergency role: the one safety question the grid asks in place. All others stand on the safety page.</summary>
public static class EmergencyNotices
{
    private const string Fact = "emergency_role";

    public static Dictionary<string, SafetyNotice> ByLine(StudyResult? result, SafetyRuleBook rules)
    {
        var about = rules.Rules.Where(r => Mentions(r.When)).Select(r => r.Id).ToHashSet();
        var byLine = new Dictionary<string, SafetyNotice>();
        foreach (var notice in (result?.Notices ?? []).Where(n => n.Open && n.Severity != NoticeSeverity.Note && about.Contains(n.Rule)))
            foreach (var line in notice.Lines.Where(l => notice.Answers.All(a => a.Line is not null && a.Line != l)))
                byLine.TryAdd(line, notice);
        return byLine;
    }

    private static bool Mentions(SafetyCondition condition) => condition switch
    {
        AllOf all => all.Parts.Any(Mentions),
        AnyOf any => any.Parts.Any(Mentions),
        Comparison one => one.Field == Fact,
        _ => false,
    };
}
