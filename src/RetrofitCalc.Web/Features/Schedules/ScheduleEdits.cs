using NodaTime;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Web.Shared;
using RetrofitCalc.Web.Shared.Fields;

namespace RetrofitCalc.Web.Features.Schedules;

/// <summary>Changes of schedules: pure functions of the study.</summary>
public static class ScheduleEdits
{
    public static readonly WeeklySchedule OfficeHours = new()
    {
        Hours = [new([IsoDayOfWeek.Monday, IsoDayOfWeek.Tuesday, IsoDayOfWeek.Wednesday, IsoDayOfWeek.Thursday, IsoDayOfWeek.Friday], new(7, 0), new(17, 0))],
    };

    public static Study Area(Study study, int area, Func<Area, Area> change) => study with { Areas = study.Areas.At(area, change) };

    public static Study Season(Study study, SeasonPlace at, Func<Season, Season> change) =>
        Area(study, at.Area, area => area with { Seasons = area.Seasons.At(at.Index, change) });

    public static Study Stage(Study study, StagePlace at, Func<Stage, Stage> change) =>
        Season(study, at.Season, season => season with { Stages = season.Stages.At(at.Index, change) });

    /// <summary>Options that light stages of the season in another way follow its name.</summary>
    public static Study RenameSeason(Study study, SeasonPlace at, string name) =>
        StagesOfOptions.Renamed(Season(study, at, season => season with { Name = name }), at.Area, study.Areas[at.Area].Seasons[at.Index].Name,
            change => change with { Season = name });

    /// <summary>Options that light the stage in another way follow its name.</summary>
    public static Study RenameStage(Study study, StagePlace at, string name)
    {
        var season = study.Areas[at.Season.Area].Seasons[at.Season.Index];
        return StagesOfOptions.Renamed(Stage(study, at, stage => stage with { Name = name }), at.Season.Area, season.Name,
            change => change.Stage == season.Stages[at.Index].Name ? change with { Stage = name } : change);
    }

    public static Study Weekly(Study study, int area, Func<WeeklySchedule, WeeklySchedule> change) =>
        Area(study, area, a => a with { Weekly = change(a.Weekly ?? new()) });

    public static Study Hours(Study study, HoursPlace at, Func<WeeklyHours, WeeklyHours> change) =>
        Weekly(study, at.Area, weekly => weekly with { Hours = weekly.Hours.At(at.Index, change) });

    /// <summary>The new season fills the free part of the year after the last one, or the whole year when it is the first.</summary>
    public static Study AddSeason(Study study, int area) => Area(study, area, a => a with
    {
        Seasons = [.. a.Seasons, new Season { Name = FreeName(a.Seasons), Start = FreeStart(a.Seasons), End = FreeEnd(a.Seasons), Stages = [NewStage(0)] }],
    });

    public static Study AddStage(Study study, SeasonPlace at) =>
        Season(study, at, season => season with { Stages = [.. season.Stages.Select(s => s with { Days = s.Days ?? 14 }), NewStage(season.Stages.Count)] });

    /// <summary>The season with its stages, to another area; that area then grows a crop.</summary>
    public static Study CopySeason(Study study, SeasonPlace from, int toArea) => Area(study, toArea, area => area with
    {
        GrowsCrop = true,
        Seasons = [.. area.Seasons, study.Areas[from.Area].Seasons[from.Index]],
    });

    public static EditState RemoveSeason(EditState state, SeasonPlace at) => new(
        StagesOfOptions.WithoutMissing(Area(state.Study, at.Area, a => a with { Seasons = a.Seasons.WithoutAt(at.Index) }), at.Area),
        state.Drafts.AfterDeleting($"Areas[{at.Area}].Seasons", at.Index));

    public static EditState RemoveStage(EditState state, StagePlace at) => new(
        StagesOfOptions.WithoutMissing(Season(state.Study, at.Season, s => s with { Stages = s.Stages.WithoutAt(at.Index) }), at.Season.Area),
        state.Drafts.AfterDeleting(at.Season.Path + ".Stages", at.Index));

    public static EditState RemoveHours(EditState state, HoursPlace at) => new(
        Weekly(state.Study, at.Area, w => w with { Hours = w.Hours.WithoutAt(at.Index) }),
        state.Drafts.AfterDeleting($"Areas[{at.Area}].Weekly.Hours", at.Index));

    private static Stage NewStage(int before) =>
        new() { Name = before == 0 ? "Growing" : $"Stage {before + 1}", LightsOn = new(6, 0), LightsOff = new(22, 0) };

    private static string FreeName(IReadOnlyList<Season> seasons) => seasons.Count == 0 ? "All year" : $"Season {seasons.Count + 1}";

    private static AnnualDate FreeStart(IReadOnlyList<Season> seasons) => seasons.Count == 0 ? new(1, 1) : Neighbour(seasons[^1].End, 1);

    private static AnnualDate FreeEnd(IReadOnlyList<Season> seasons) => seasons.Count == 0 ? new(12, 31) : Neighbour(seasons[0].Start, -1);

    private static AnnualDate Neighbour(AnnualDate day, int step)
    {
        var next = day.InYear(2027).PlusDays(step);
        return new(next.Month, next.Day);
    }
}

/// <summary>A season of an area.</summary>
public readonly record struct SeasonPlace(int Area, int Index)
{
    public string Path => $"Areas[{Area}].Seasons[{Index}]";
}

/// <summary>A stage of a season.</summary>
public readonly record struct StagePlace(SeasonPlace Season, int Index)
{
    public string Path => $"{Season.Path}.Stages[{Index}]";
}

/// <summary>A lit spell of a weekly schedule.</summary>
public readonly record struct HoursPlace(int Area, int Index)
{
    public string Path => $"Areas[{Area}].Weekly.Hours[{Index}]";
}
