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

    [ReferenceTopic("seer_to_eer")]
    private static double EerFromSeer(JsonElement i) => CoolingRatings.EerFromSeer(i.Number("seer"));

    [ReferenceTopic("hspf_to_cop")]
    private static double CopFromHspf(JsonElement i) => HeatingRatings.CopFromHspf(i.Number("hspf"));

    [ReferenceTopic("cooling_credit")]
    private static double CoolingCredit(JsonElement i) => i.Number("lighting_kwh_saved") * PlantResponse.Of(
        new PlantInteraction { CooledShare = i.Number("cooled_fraction"), CoolingCop = i.Number("cop") }, PlantMode.AllHours).Electricity;

    [ReferenceTopic("heating_penalty_therms")]
    private static double HeatingPenalty(JsonElement i) => i.Number("lighting_kwh_saved") * PlantResponse.Of(
        new PlantInteraction { HeatedShare = i.Number("heated_fraction"), FurnaceEfficiency = i.Number("furnace_eff") }, PlantMode.AllHours).FuelTherms;

    [ReferenceTopic("hvac_interaction_yield")]
    private static double ElectricityKept(JsonElement i)
    {
        var row = InteractionTable.Rows.Single(row => row.Building == "Office under 20,000 sq ft");
        Assert.Equal(i.Number("yield_"), row.Factor(HeatingKind.HeatPump));
        var plant = new PlantInteraction { Method = PlantMethod.InteractionFactors, InteractionFactor = row.Factor(HeatingKind.HeatPump)!.Value };
        return i.Number("lighting_kwh_saved") * (1 + PlantResponse.Of(plant, PlantMode.AllHours).Electricity);
    }

    /// <summary>The check counts fuel as the table does, negative when heating makes up; the engine counts what the lights' heat makes unnecessary.</summary>
    [ReferenceTopic("hvac_interaction_gas")]
    private static double FuelMadeUp(JsonElement i)
    {
        var row = InteractionTable.Rows.Single(row => row.Building == "Office under 20,000 sq ft");
        Assert.Equal(i.Number("therms_per_kwh"), row.ThermsFor(HeatingKind.Fuel));
        var plant = new PlantInteraction { Method = PlantMethod.InteractionFactors, InteractionTherms = row.ThermsFor(HeatingKind.Fuel) };
        return -i.Number("lighting_kwh_saved") * PlantResponse.Of(plant, PlantMode.AllHours).FuelTherms;
    }

    [ReferenceTopic("latent_from_transpiration")]
    private static double HeatOfWater(JsonElement i) => Moisture.LatentHeat(
        i.Number("lb_per_h") * UnitConversions.KilogramsPerPound,
        i.Number("btu_per_lb") * UnitConversions.JoulesPerBtu / 1000 / UnitConversions.KilogramsPerPound).BtuPerHour;

    [ReferenceTopic("sensible_latent_split")]
    private static double WaterOfHeat(JsonElement i)
    {
        Assert.Equal(Moisture.KilojoulesPerKilogram, i.Number("h_fg_kj_kg"));
        return Moisture.KilogramsPerHour(Power.FromWatts(i.Number("lights_w")) * i.Number("latent_fraction"));
    }
}
