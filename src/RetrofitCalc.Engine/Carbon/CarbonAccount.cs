using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Engine.Carbon;

/// <summary>What the lighting of a site emits, and what a change of it brings (E-29).</summary>
public static class CarbonAccount
{
    /// <summary>Carbon dioxide of one therm of natural gas burned: 53.06 kg/MMBtu · 0.1. [kg/therm]</summary>
    /// <remarks>EPA Emission Factors Hub, natural gas; from memory. Fuel of another kind emits more.</remarks>
    public const double KilogramsPerTherm = 5.306;

    /// <summary>Average emissions of lighting and plant in a year, less what the lights' heat saves the furnace: for an inventory. [kg CO2e]</summary>
    /// <param name="region">Grid region.</param>
    /// <param name="lighting">One state of the lighting.</param>
    public static double Inventory(GridRegion region, LightingCase lighting) =>
        GridFactors.Kilograms(Electricity(lighting), region.Average) - Fuel(lighting);

    /// <summary>What a change saves in a year: electricity at the rate of plants that answer to it, less fuel that heating burns instead. [kg CO2e; negative when more is emitted]</summary>
    /// <param name="region">Grid region.</param>
    /// <param name="now">The lighting now.</param>
    /// <param name="after">The lighting after the change.</param>
    public static double Saved(GridRegion region, LightingCase now, LightingCase after) =>
        GridFactors.Kilograms(Electricity(now) - Electricity(after), region.NonBaseload) - (Fuel(now) - Fuel(after));

    /// <summary>What the lights' heat saves the furnace in a year. [kg CO2]</summary>
    /// <param name="lighting">One state of the lighting.</param>
    public static double Fuel(LightingCase lighting) => lighting.Site.FuelTherms * KilogramsPerTherm;

    private static Energy Electricity(LightingCase lighting) => lighting.Site.Lighting + lighting.Site.Plant;
}
