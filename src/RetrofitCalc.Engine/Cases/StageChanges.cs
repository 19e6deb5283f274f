using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Cases;

/// <summary>Stages as an option lights them.</summary>
public static class StageChanges
{
    /// <summary>An area with its stages changed; the very same where nothing differs.</summary>
    /// <param name="area">The area as it is.</param>
    /// <param name="changes">Changes of an option, those of other areas among them.</param>
    public static Area Applied(Area area, IReadOnlyList<StageChange> changes)
    {
        List<Season> seasons = [.. area.Seasons.Select(season => Applied(area, season, changes))];
        return seasons.SequenceEqual(area.Seasons, ReferenceEqualityComparer.Instance) ? area : area with { Seasons = seasons };
    }

    /// <summary>A stage as an option lights it; the very same where nothing differs.</summary>
    /// <param name="stage">The stage as it is.</param>
    /// <param name="change">What changes; null for nothing.</param>
    public static Stage Applied(Stage stage, StageChange? change)
    {
        if (change is null)
            return stage;
        var changed = stage with
        {
            LightsOn = change.LightsOn ?? stage.LightsOn,
            LightsOff = change.LightsOff ?? stage.LightsOff,
            LitStep = change.LitStep switch { null => stage.LitStep, "" => null, var step => step },
            Dimming = change.Dimming ?? stage.Dimming,
        };
        return changed == stage ? stage : changed;
    }

    private static Season Applied(Area area, Season season, IReadOnlyList<StageChange> changes)
    {
        List<Stage> stages = [.. season.Stages.Select(stage => Applied(stage, changes.FirstOrDefault(change => IsOf(change, area, season, stage))))];
        return stages.SequenceEqual(season.Stages, ReferenceEqualityComparer.Instance) ? season : season with { Stages = stages };
    }

    private static bool IsOf(StageChange change, Area area, Season season, Stage stage) =>
        change.Area == area.Id && change.Season == season.Name && change.Stage == stage.Name;
}
