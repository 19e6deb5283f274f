using System.Text.Json;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Tests.Samples;

namespace RetrofitCalc.Engine.Tests.Reference;

internal static class Input_power_figures
{
    [ReferenceTopic("ballast_efficacy_factor")]
    private static double EfficacyFactor(JsonElement i) => BallastPower.EfficacyFactor(i.Number("bf"), Power.FromWatts(i.Number("input_w")));

    [ReferenceTopic("bef_min_to_max_input_w")]
    private static double MaximumInput(JsonElement i) => BallastPower.MaximumInput(i.Number("bf"), i.Number("bef_min")).Watts;

    [ReferenceTopic("ballast_input_w"), ReferenceTopic("input_w_crosscheck")]
    private static double FromParts(JsonElement i)
    {
        var lamp = SampleCatalogue.LampT8 with { ArcPower = Power.FromWatts(i.Number("arc_w")) };
        var ballast = SampleCatalogue.Electronic with { BallastFactor = i.Number("bf"), LuminousEfficiency = i.Number("ble") };
        var setUp = SampleCatalogue.TwoT8 with { Ballasts = [new BallastPosition(ballast.Id, i.Count("lamps"))] };
        return new SetUpModel(setUp, lamp, [ballast]).Full!.Total.Watts;
    }
}
