using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Web.Features.Schedules;

/// <summary>Stages that options light in another way are known by name: what they say follows the schedule, or the study would be refused.</summary>
public static class StagesOfOptions
{
    /// <summary>
    /// Changes of a season whose stage is no longer there follow the new name. Where another stage still has the old name they stay with that one; where
    /// the new name already has a change of its own, that one holds.
    /// </summary>
    public static Study Renamed(Study study, int area, string season, Func<StageChange, StageChange> rename)
    {
        var place = study.Areas[area];
        return Each(study, changes => [.. changes
            .Select(change => change.Area == place.Id && change.Season == season && !Has(place, change) ? rename(change) : change)
            .DistinctBy(change => (change.Area, change.Season, change.Stage))]);
    }

    /// <summary>Without changes of stages that the area does not have (any more).</summary>
    public static Study WithoutMissing(Study study, int area)
    {
        var place = study.Areas[area];
        return Each(study, changes => [.. changes.Where(change => change.Area != place.Id || Has(place, change))]);
    }

    private static Study Each(Study study, Func<IReadOnlyList<StageChange>, IReadOnlyList<StageChange>> follow) => study.Options.All(option => option.Stages.Count == 0) ? study
        : study with { Options = [.. study.Options.Select(option => option.Stages.Count == 0 ? option : option with { Stages = follow(option.Stages) })] };

    private static bool Has(Area area, StageChange change) =>
        area.Seasons.Any(season => season.Name == change.Season && season.Stages.Any(stage => stage.Name == change.Stage));
}
