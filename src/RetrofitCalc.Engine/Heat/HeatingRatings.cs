using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Heat;

/// <summary>Ratings of heat pumps (E-26).</summary>
public static class HeatingRatings
{
    /// <summary>Seasonal coefficient of performance of a heating seasonal performance factor: HSPF / 3.412142. [unitless]</summary>
    /// <param name="hspf">Heating seasonal performance factor. [(BTU/h)/W]; HSPF2 is another rating.</param>
    /// <remarks>Unit definitions.</remarks>
    public static double CopFromHspf(double hspf) => hspf / UnitConversions.BtuPerHourPerWatt;
}
