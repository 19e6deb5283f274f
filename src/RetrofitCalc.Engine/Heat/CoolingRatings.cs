using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Heat;

/// <summary>Ratings of cooling plant, one into another (E-26). EER and kW/ton are at design conditions; SEER is a season's average and goes through EER.</summary>
public static class CoolingRatings
{
    /// <summary>Coefficient of performance of an energy efficiency ratio: EER / 3.412142. [unitless]</summary>
    /// <param name="eer">Energy efficiency ratio. [(BTU/h)/W]</param>
    public static double CopFromEer(double eer) => eer / UnitConversions.BtuPerHourPerWatt;

    /// <summary>Energy efficiency ratio of a coefficient of performance: 3.412142 · COP. [(BTU/h)/W]</summary>
    /// <param name="cop">Coefficient of performance. [unitless]</param>
    public static double EerFromCop(double cop) => cop * UnitConversions.BtuPerHourPerWatt;

    /// <summary>Energy efficiency ratio of a seasonal one: 1.12 · SEER − 0.02 · SEER². [(BTU/h)/W]</summary>
    /// <param name="seer">Seasonal energy efficiency ratio. [(BTU/h)/W; 6–26, where the curve still rises]</param>
    /// <remarks>A fit for residential plant in US guidance for building simulation, read in a trade forum; SEER2 is another rating.</remarks>
    public static double EerFromSeer(double seer) => 1.12 * seer - 0.02 * seer * seer;

    /// <summary>Coefficient of performance of kilowatts a ton. [unitless]</summary>
    /// <param name="kilowattsPerTon">Power for one ton of refrigeration. [kW/ton]</param>
    public static double CopFromKilowattsPerTon(double kilowattsPerTon) =>
        CopFromEer(UnitConversions.BtuPerHourPerTon / (kilowattsPerTon * UnitConversions.WattsPerKilowatt));
}
