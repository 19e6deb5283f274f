using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Heat;

/// <summary>Ratings of cooling plant, one into another. All are at design conditions: a seasonal rating is not one of them.</summary>
public static class CoolingRatings
{
    /// <summary>Coefficient of performance of an energy efficiency ratio: EER / 3.412142. [unitless]</summary>
    /// <param name="eer">Energy efficiency ratio. [(BTU/h)/W]</param>
    public static double CopFromEer(double eer) => eer / UnitConversions.BtuPerHourPerWatt;

    /// <summary>Energy efficiency ratio of a coefficient of performance: 3.412142 · COP. [(BTU/h)/W]</summary>
    /// <param name="cop">Coefficient of performance. [unitless]</param>
    public static double EerFromCop(double cop) => cop * UnitConversions.BtuPerHourPerWatt;

    /// <summary>Coefficient of performance of kilowatts a ton. [unitless]</summary>
    /// <param name="kilowattsPerTon">Power for one ton of refrigeration. [kW/ton]</param>
    public static double CopFromKilowattsPerTon(double kilowattsPerTon) =>
        CopFromEer(UnitConversions.BtuPerHourPerTon / (kilowattsPerTon * UnitConversions.WattsPerKilowatt));
}
