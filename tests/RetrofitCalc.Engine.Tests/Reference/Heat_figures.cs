using System.Text.Json;
using RetrofitCalc.Engine.Heat;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Tests.Reference;

internal static class Heat_figures
{
    [ReferenceTopic("w_to_btuh")]
    private static double Watts(JsonElement i) => Power.FromWatts(i.Number("w")).BtuPerHour;

    [ReferenceTopic("fixture_w_to_btuh")]
    private static double Fixture(JsonElement i) => LightingGain.FromInput(Power.FromWatts(i.Number("w")), 1).BtuPerHour;

    [ReferenceTopic("ashrae_lighting_gain")]
    private static double LampWatts(JsonElement i) =>
        LightingGain.BtuPerHourFromLamps(Power.FromWatts(i.Number("lamp_w")), i.Number("f_ul"), i.Number("f_sa"));

    [ReferenceTopic("btuh_to_tons")]
    private static double Tons(JsonElement i) => Power.FromWatts(i.Number("btuh") / UnitConversions.BtuPerHourPerWatt).TonsOfCooling;

    [ReferenceTopic("eer_to_cop")]
    private static double CopFromEer(JsonElement i) => CoolingRatings.CopFromEer(i.Number("eer"));

    [ReferenceTopic("cop_to_eer")]
    private static double EerFromCop(JsonElement i) => CoolingRatings.EerFromCop(i.Number("cop"));

    [ReferenceTopic("kw_per_ton_to_cop")]
    private static double CopFromKilowattsPerTon(JsonElement i) => CoolingRatings.CopFromKilowattsPerTon(i.Number("kw_per_ton"));

    [ReferenceTopic("cooling_credit")]
    private static double CoolingCredit(JsonElement i) => i.Number("lighting_kwh_saved") * PlantResponse.CoolingShare(
        new PlantInteraction { CooledShare = i.Number("cooled_fraction"), CoolingCop = i.Number("cop") });

    [ReferenceTopic("heating_penalty_therms")]
    private static double HeatingPenalty(JsonElement i) => PlantResponse.FuelTherms(
        new PlantInteraction { HeatedShare = i.Number("heated_fraction"), FurnaceEfficiency = i.Number("furnace_eff") },
        Energy.FromKilowattHours(i.Number("lighting_kwh_saved")));
}
