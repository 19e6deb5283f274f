using System.Text.Json;
using RetrofitCalc.Engine.Lifetimes;
using RetrofitCalc.Engine.Lifetimes.Survival;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Tests.Reference;

internal static class Figures_of_life
{
    [ReferenceTopic("group_relamp_hours")]
    private static double GroupHours(JsonElement i) => RatedLives.GroupRelamp(Hours(i, "rated_h"), i.Number("fraction")).Hours;

    [ReferenceTopic("hours_to_years"), ReferenceTopic("group_relamp_years")]
    private static double Years(JsonElement i) =>
        RatedLives.Years(RatedLives.GroupRelamp(Hours(i, "rated_h"), i.Number("fraction")), Hours(i, "h_per_day") * 365)!.Value;

    [ReferenceTopic("life_gain_12h_over_3h")]
    private static double Gain(JsonElement i)
    {
        LampLife[] sheet = [new(3, StartMethod.Instant, Hours(i, "h3")), new(12, StartMethod.Instant, Hours(i, "h12"))];
        return LampLives.At(sheet, StartMethod.Instant, 12)!.Value / LampLives.At(sheet, StartMethod.Instant, 3)!.Value;
    }

    [ReferenceTopic("burn_hours_247")]
    private static double BurnHours(JsonElement i) => FieldFailures.Burned(i.Number("months"), Hours(i, "h_per_month")).Hours;

    [ReferenceTopic("failed_fraction_pct")]
    private static double FailedPercent(JsonElement i) => 100 * new FieldFailures((int)i.Number("failed"), (int)i.Number("total")).Share;

    [ReferenceTopic("tm21_6x_cap")]
    private static double Cap(JsonElement i) => RatedLives.Quotable(OperatingTime.FromHours(1e6), Hours(i, "test_h")).Hours;

    [ReferenceTopic("tm21_required_test_h")]
    private static double TestNeeded(JsonElement i) => RatedLives.TestNeeded(Hours(i, "claim_h")).Hours;

    [ReferenceTopic("tm21_l70")]
    private static double ToSeventyPercent(JsonElement i) => RatedLives.ToShareOfLight(i.Number("B"), i.Number("alpha")).Hours;

    [ReferenceTopic("ballast_life_10c_rule")]
    private static double Ballast(JsonElement i) => RatedLives.BallastAt(Hours(i, "rated_h"), i.Number("rated_tc"), i.Number("tc")).Hours;

    private static OperatingTime Hours(JsonElement i, string name) => OperatingTime.FromHours(i.Number(name));
}
