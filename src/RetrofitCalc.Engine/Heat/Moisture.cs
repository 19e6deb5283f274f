using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Heat;

/// <summary>Heat of the lights that plants turn into water vapour (E-28). The total is unchanged: less warms the air, more must be dried out of it.</summary>
public static class Moisture
{
    /// <summary>Heat that evaporates water near 20 °C. [kJ/kg]</summary>
    /// <remarks>Physical constant, from memory.</remarks>
    public const double KilojoulesPerKilogram = 2450;

    /// <summary>Water that a latent heat flow evaporates: W · 3.6 / 2450. [kg/h]</summary>
    /// <param name="latent">Part of the lights' heat that is latent.</param>
    public static double KilogramsPerHour(Power latent) => latent.Watts * 3.6 / KilojoulesPerKilogram;

    /// <summary>Latent heat flow of water given off.</summary>
    /// <param name="kilogramsPerHour">Water given off. [kg/h]</param>
    /// <param name="kilojoulesPerKilogram">Heat of evaporation. [kJ/kg]</param>
    public static Power LatentHeat(double kilogramsPerHour, double kilojoulesPerKilogram = KilojoulesPerKilogram) =>
        Power.FromWatts(kilogramsPerHour * kilojoulesPerKilogram / 3.6);
}
