using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Heat;

/// <summary>What cooling and heating plant does about the lights' heat (E-05, E-27).</summary>
/// <remarks>
/// An energy balance, except for interaction factors, which are published for a kind of building. Factors hold for lights that give all
/// their heat to the space; a smaller share shrinks them in proportion.
/// </remarks>
public static class PlantResponse
{
    private static readonly double ThermsPerKilowattHour =
        UnitConversions.WattsPerKilowatt * UnitConversions.BtuPerHourPerWatt / UnitConversions.BtuPerTherm;

    /// <summary>What follows each kilowatt-hour of heat in the space.</summary>
    /// <param name="plant">The plant.</param>
    /// <param name="mode">What it does in the hours looked at; by the hour only.</param>
    /// <exception cref="ArgumentOutOfRangeException">The method is not known.</exception>
    public static PlantEffect Of(PlantInteraction plant, PlantMode mode) => plant.Method switch
    {
        PlantMethod.Shares => Of(plant, plant.CooledShare, plant.HeatedShare),
        PlantMethod.InteractionFactors => new(plant.InteractionFactor - 1, -plant.InteractionTherms),
        PlantMethod.Hourly => Of(plant, mode == PlantMode.Cooling ? 1 : 0, mode == PlantMode.Heating ? 1 : 0),
        PlantMethod.SealedRoom => Of(plant, 1, 0),
        _ => throw new ArgumentOutOfRangeException(nameof(plant), plant.Method, "Unknown method."),
    };

    private static PlantEffect Of(PlantInteraction plant, double cooled, double heated) => plant.HeatingCop is { } cop
        ? new(cooled / plant.CoolingCop - heated / cop, 0)
        : new(cooled / plant.CoolingCop, heated * ThermsPerKilowattHour / plant.FurnaceEfficiency);
}
