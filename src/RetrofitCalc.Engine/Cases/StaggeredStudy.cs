using NodaTime;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Uncertainty;

namespace RetrofitCalc.Engine.Cases;

/// <summary>A study whose lights come on at other times in one area.</summary>
internal static class StaggeredStudy
{
    /// <summary>Whether an area's lit days can be moved: each begins on the same day as before, and none lasts day and night.</summary>
    /// <param name="area">The area.</param>
    /// <param name="minutes">Later, or earlier when negative. [min]</param>
    public static bool CanMove(Area area, int minutes)
    {
        List<Stage> stages = [.. area.Seasons.SelectMany(season => season.Stages)];
        return area.GrowsCrop && stages.Count > 0 && stages.All(stage => stage.LightsOn != stage.LightsOff && StaysOnItsDay(stage.LightsOn, minutes));
    }

    /// <summary>The area with every lit day moved, its length kept.</summary>
    /// <param name="area">The area.</param>
    /// <param name="minutes">Later, or earlier when negative. [min]</param>
    public static Area Moved(Area area, int minutes) => area with
    {
        Seasons = [.. area.Seasons.Select(season => season with
        {
            Stages = [.. season.Stages.Select(stage => stage with { LightsOn = stage.LightsOn.PlusMinutes(minutes), LightsOff = stage.LightsOff.PlusMinutes(minutes) })],
        })],
    };

    /// <summary>The study with one area moved; its meter shows what it would then have shown.</summary>
    /// <param name="present">The study as it is.</param>
    /// <param name="area">Index of the area.</param>
    /// <param name="minutes">Later, or earlier when negative. [min]</param>
    public static StudyContext Of(StudyContext present, int area, int minutes)
    {
        var study = present.Study with
        {
            Areas = [.. present.Study.Areas.Select((each, i) => i == area ? Moved(each, minutes) : each)],
            Options = [.. present.Study.Options.Select(option => Moved(option, present.Study.Areas[area].Id, minutes))],
        };
        var moved = new StudyContext(study);
        return study.Meter is { } meter ? new StudyContext(study with { Meter = Metered(meter, present, moved) }) : moved;
    }

    private static RetrofitOption Moved(RetrofitOption option, string area, int minutes) => option.Stages.Count == 0 ? option : option with
    {
        Stages = [.. option.Stages.Select(change => change.Area != area ? change : change with
        {
            LightsOn = change.LightsOn?.PlusMinutes(minutes), LightsOff = change.LightsOff?.PlusMinutes(minutes),
        })],
    };

    /// <summary>Readings less the lighting at its present times plus the lighting at the others, averaged over each interval.</summary>
    private static MeterYear Metered(MeterYear meter, StudyContext present, StudyContext moved)
    {
        var seconds = meter.IntervalMinutes * 60L;
        var (before, after) = (LoadsOf(present, seconds), LoadsOf(moved, seconds));
        var first = (int)((present.Year.Start - present.Year.StartOf(meter.FirstDay)) / seconds);
        double?[] watts = [.. meter.Watts];
        for (var i = 0; i < before.Length; i++)
            watts[first + i] += (after[i] - before[i]) * 1000;
        return meter with { Watts = watts };
    }

    private static double[] LoadsOf(StudyContext context, long seconds) =>
        IntervalLoads.Of(context, context.PresentUnder(Perturbation.None).Lighting.StateKilowatts, seconds);

    private static bool StaysOnItsDay(LocalTime on, int minutes) =>
        on.TickOfDay / NodaConstants.TicksPerMinute + minutes is >= 0 and < 24 * 60;
}
