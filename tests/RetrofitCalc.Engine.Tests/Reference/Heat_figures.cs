using System.Text.Json;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Tests.Reference;

internal static class Heat_figures
{
    [ReferenceTopic("w_to_btuh")]
    private static double Watts(JsonElement i) => Power.FromWatts(i.Number("w")).BtuPerHour;

    [ReferenceTopic("fixture_w_to_btuh")]
    private static double Fixture(JsonElement i) => Power.FromWatts(i.Number("w")).BtuPerHour;
}
