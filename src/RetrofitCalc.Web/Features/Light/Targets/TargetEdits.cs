using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Surveys;
using RetrofitCalc.Web.Features.Schedules;
using RetrofitCalc.Web.Shared;
using RetrofitCalc.Web.Shared.Fields;

namespace RetrofitCalc.Web.Features.Light.Targets;

/// <summary>Changes of what crops want: pure functions of the study.</summary>
public static class TargetEdits
{
    public const string Changed = "changed by hand from: ";

    public static string Path(StagePlace at) => $"{at.Path}.Target";

    public static Stage? StageAt(Study study, StagePlace at) =>
        study.Areas.ElementAtOrDefault(at.Season.Area)?.Seasons.ElementAtOrDefault(at.Season.Index)?.Stages.ElementAtOrDefault(at.Index);

    /// <summary>A target as a whole: from the table, an own one, or none. Texts typed for the old one go with it.</summary>
    public static EditState Use(EditState state, StagePlace at, LightTarget? target) => new(
        ScheduleEdits.Stage(state.Study, at, stage => stage with { Target = target }),
        [.. state.Drafts.Where(draft => draft.Line != Path(at))]);

    /// <summary>Another bound: what a source said is then no longer what stands here.</summary>
    public static Study Bound(Study study, StagePlace at, Func<LightTarget, LightTarget> change) => Set(study, at, target => change(target) with
    {
        Source = Unsourced(target.Source),
        WeakSource = false,
    });

    public static Study Set(Study study, StagePlace at, Func<LightTarget, LightTarget> change) =>
        ScheduleEdits.Stage(study, at, stage => stage.Target is { } target ? stage with { Target = change(target) } : stage);

    public static LightTarget Own(string name) => new() { Crop = name, Source = Provenance.None };

    /// <summary>The target of one stage, for the stages of its area that have none.</summary>
    public static Study CopyInArea(Study study, StagePlace from)
    {
        var target = StageAt(study, from)?.Target;
        return ScheduleEdits.Area(study, from.Season.Area, area => area with
        {
            Seasons = [.. area.Seasons.Select(season => season with { Stages = [.. season.Stages.Select(stage => stage with { Target = stage.Target ?? target })] })],
        });
    }

    public static Study AddStray(Study study, int area, string onto) =>
        Stray(study, area, strays => [.. strays, new(onto, PhotonFluxDensity.Zero)]);

    public static Study Stray(Study study, int area, int index, Func<StrayLight, StrayLight> change) => Stray(study, area, strays => strays.At(index, change));

    public static EditState RemoveStray(EditState state, int area, int index) => new(
        Stray(state.Study, area, strays => strays.WithoutAt(index)), state.Drafts.AfterDeleting($"Areas[{area}].Light.Stray", index));

    private static Study Stray(Study study, int area, Func<IReadOnlyList<StrayLight>, IReadOnlyList<StrayLight>> change) =>
        ScheduleEdits.Area(study, area, a => a with { Light = (a.Light ?? new()) with { Stray = change(a.Light?.Stray ?? []) } });

    private static Provenance Unsourced(Provenance source) => source.Kind == EvidenceKind.Unsourced ? source : new(EvidenceKind.Unsourced, Changed + source.Source);
}
