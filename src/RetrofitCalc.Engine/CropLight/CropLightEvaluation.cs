using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>Whether each growing area keeps its light.</summary>
public static class CropLightEvaluation
{
    /// <summary>A verdict for each stage of each growing area.</summary>
    /// <param name="study">The study.</param>
    public static CropLightResult Of(Study study) => new(
        [.. study.Areas.Where(area => area.GrowsCrop).SelectMany(area => area.Seasons.SelectMany(season => season.Stages.Select(stage => NotKnown(area, season, stage))))], []);

    private static StageLight NotKnown(Area area, Season season, Stage stage) => new()
    {
        Area = area.Id, Season = season.Name, Stage = stage.Name,
        Verdict = LightVerdict.NotKnown,
        Target = stage.Target,
        Photoperiod = Photoperiod(stage),
        Ask = $"Read the light in {area.Name} on a grid at the height of the crop.",
    };

    private static OperatingTime Photoperiod(Stage stage)
    {
        var hours = (stage.LightsOff - stage.LightsOn).ToDuration().TotalHours;
        return OperatingTime.FromHours(hours > 0 ? hours : hours + 24);
    }
}
