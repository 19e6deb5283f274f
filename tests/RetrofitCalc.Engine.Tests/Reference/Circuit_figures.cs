using System.Text.Json;
using RetrofitCalc.Engine.Circuits;

namespace RetrofitCalc.Engine.Tests.Reference;

internal static class Circuit_figures
{
    [ReferenceTopic("continuous_ocpd_a")]
    private static double LeastRating(JsonElement i) => ContinuousLoad.LeastRating(i.Number("cont_a"), i.Number("noncont_a"));

    [ReferenceTopic("max_fixtures")]
    private static double MostLuminaires(JsonElement i) => ContinuousLoad.MostLuminaires(
        ContinuousLoad.Amperes(i.Number("fixture_w"), i.Number("v"), i.Number("pf")), i.Number("breaker_a"));

    [ReferenceTopic("power_factor_from_va")]
    private static double FromReading(JsonElement i) => PowerFactors.FromReading(i.Number("w"), i.Number("v"), i.Number("a"));

    [ReferenceTopic("pf_from_thd")]
    private static double FromDistortion(JsonElement i) => PowerFactors.FromDistortion(i.Number("thd"), i.Number("disp_pf"));
}
