using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Web.Shared;
using RetrofitCalc.Web.Shared.Fields;

namespace RetrofitCalc.Web.Features.Survey.Edits;

/// <summary>Changes of the survey's areas.</summary>
public static class AreaEdits
{
    private const string List = "Areas";

    public static EditState Add(EditState state, Area area) => WithAreas(state, [.. state.Study.Areas, area]);

    /// <summary>Without an area that has no lines; an area with lines stays.</summary>
    public static EditState Remove(EditState state, string area)
    {
        var index = state.Study.Areas.ToList().FindIndex(a => a.Id == area);
        if (index < 0 || state.Study.Lines.Any(l => l.Area == area)) return state;
        var without = WithAreas(state, LightFollows.WithoutArea(state.Study.Areas.WithoutAt(index), area));
        return without with { Study = without.Study with { Options = WithoutStagesOf(area, state.Study.Options) }, Drafts = state.Drafts.AfterDeleting(List, index) };
    }

    /// <summary>Changes places with the area before (−1) or after (+1) it.</summary>
    public static EditState Move(EditState state, string area, int step)
    {
        var areas = state.Study.Areas.ToList();
        var from = areas.FindIndex(a => a.Id == area);
        var to = from + step;
        if (from < 0 || to < 0 || to >= areas.Count) return state;
        (areas[from], areas[to]) = (areas[to], areas[from]);
        return WithAreas(state, areas) with { Drafts = state.Drafts.AfterSwapping(List, from, to) };
    }

    private static IReadOnlyList<RetrofitOption> WithoutStagesOf(string area, IReadOnlyList<RetrofitOption> options) =>
        [.. options.Select(option => option with { Stages = [.. option.Stages.Where(stage => stage.Area != area)] })];

    private static EditState WithAreas(EditState state, IReadOnlyList<Area> areas) =>
        state with { Study = state.Study with { Areas = areas } };
}
