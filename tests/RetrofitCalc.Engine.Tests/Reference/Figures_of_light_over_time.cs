using System.Text.Json;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Tests.Reference;

internal static class Figures_of_light_over_time
{
    [CanopyAnswer("light loss", "llf")]
    private static Answers Loss(JsonElement i) => i.Numbers("factors") is [var lamp, var dirt, var air] ? new LightLoss(lamp, dirt, air).Factor : double.NaN;

    [CanopyAnswer("lamp temperature", "ratio")]
    private static Answers Temperature(JsonElement i) => LampTemperature.Ratio(Lumens(i, "a"), Lumens(i, "b"));

    [ReferenceTopic("ballast_factor_lumens")]
    private static double OnBallast(JsonElement i) => FittedOutput.OnBallast(i.Number("lamps"), Lumens(i, "lamp_lm"), i.Number("bf")).Lumens;

    [ReferenceTopic("mean_lumens")]
    private static double Mean(JsonElement i) =>
        (FittedOutput.OnBallast(i.Number("lamps"), Lumens(i, "lm"), i.Number("bf")) * new LightLoss(i.Number("lld"), 1, 1).Factor).Lumens;

    [ReferenceTopic("mean_over_initial")]
    private static double MeanOverInitial(JsonElement i) => LumenMaintenance.MeanOverInitial(Lumens(i, "initial"), Lumens(i, "mean"));

    /// <summary>Percent lost at the point where mean light is read, on a lamp of any life.</summary>
    [ReferenceTopic("lumen_loss_pct")]
    private static double Lost(JsonElement i)
    {
        var point = OperatingTime.FromHours(8_000);
        var share = LumenMaintenance.MeanOverInitial(Lumens(i, "initial"), Lumens(i, "at_40pct"));
        return 100 * (1 - LumenMaintenance.Through(OperatingTime.FromHours(LumenMaintenance.SeasoningHours), point, share).At(point));
    }

    private static LuminousFlux Lumens(JsonElement i, string name) => LuminousFlux.FromLumens(i.Number(name));
}
