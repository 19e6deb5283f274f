using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Heat;

/// <summary>What cooling and heating plant does about the lights' heat, by shares of the lit hours (E-05).</summary>
/// <remarks>An energy balance; no interaction factors of a building type. Sources: unit definitions; plant figures are the user's.</remarks>
public static class PlantResponse
{
    /// <summary>Electricity for cooling, for each unit of heat in the space: share cooled over COP. [unitless]</summary>
    /// <param name="plant">The plant.</param>
    public static double CoolingShare(PlantInteraction plant) => plant.CooledShare / plant.CoolingCop;

    /// <summary>Electric heating saved, for each unit of heat in the space: share heated over COP; zero for fuel heating. [unitless]</summary>
    /// <param name="plant">The plant.</param>
    public static double ElectricHeatingShare(PlantInteraction plant) =>
        plant.HeatingCop is { } cop ? plant.HeatedShare / cop : 0;

    /// <summary>Electricity of the plant that follows the lights, for each unit of heat in the space; negative when more heating is saved than cooling used. [unitless]</summary>
    /// <param name="plant">The plant.</param>
    public static double ElectricShare(PlantInteraction plant) => CoolingShare(plant) - ElectricHeatingShare(plant);

    /// <summary>Fuel that the lights' heat makes unnecessary; zero for electric heating. [therm]</summary>
    /// <param name="plant">The plant.</param>
    /// <param name="heatInSpace">Heat released in the conditioned space.</param>
    public static double FuelTherms(PlantInteraction plant, Energy heatInSpace) =>
        plant.HeatingCop is null
            ? Therms(heatInSpace) * plant.HeatedShare / plant.FurnaceEfficiency
            : 0;

    /// <summary>Energy in therms of 100,000 BTU. [therm]</summary>
    /// <param name="energy">The energy.</param>
    public static double Therms(Energy energy) =>
        energy.KilowattHours * UnitConversions.WattsPerKilowatt * UnitConversions.BtuPerHourPerWatt / UnitConversions.BtuPerTherm;
}
