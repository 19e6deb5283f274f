using RetrofitCalc.Data;
using RetrofitCalc.Engine;
using RetrofitCalc.Engine.Safety;
using RetrofitCalc.Web.Shared;

namespace RetrofitCalc.Web.Features.Studies;

/// <summary>The list of studies with their figures; new ones that nobody has opened yet are evaluated here, a few at a time.</summary>
public sealed class StudyList(StudyStore store, SafetyRuleBook rules)
{
    private const int AtOnce = 5;

    public async Task<IReadOnlyList<StudyHeadline>> ReadAsync(bool archived)
    {
        var studies = await store.ListAsync(archived);
        var missing = studies.Where(s => s.Figures is null).Take(AtOnce).ToList();
        foreach (var study in missing) await FillAsync(study.Id);
        return missing.Count == 0 ? studies : await store.ListAsync(archived);
    }

    private async Task FillAsync(Guid id)
    {
        if (await store.FindAsync(id) is not { } stored || StudyEvaluation.Check(stored.Study).Count > 0) return;
        if (Headline.Of(StudyEvaluation.Run(stored.Study, rules), stale: false) is { } figures)
            await store.SetHeadlineAsync(id, stored.Revision, figures);
    }
}
