using RetrofitCalc.Web.Shared;
using RetrofitCalc.Web.Shared.Fields;

namespace RetrofitCalc.Web.Features.Tariffs;

/// <summary>What must be mended in a part of the tariff, so that a folded part opens.</summary>
public static class TariffProblems
{
    /// <summary>Whether a problem or a kept text stands at a path that begins so.</summary>
    public static bool Any(StudySession session, params string[] beginnings) =>
        session.State.Drafts.Select(d => FieldNames.Full(d.Line, d.Field)).Concat(session.Problems.Select(p => p.Path))
            .Any(path => beginnings.Any(b => path.StartsWith(b, StringComparison.Ordinal)));
}
