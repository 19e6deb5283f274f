using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Economics.Measures;

/// <summary>A sum of today spread evenly over years (E-96). Alternatives of unlike lives compare by it.</summary>
public static class AnnualEquivalent
{
    /// <summary>Capital recovery factor: even yearly amount for 1 today. [unitless a year]</summary>
    /// <param name="rate">Discount rate. [unitless a year, above −1]</param>
    /// <param name="years">Years. [count, 1 or more]</param>
    /// <remarks>UCR = 1/UPV, ASTM E917: memory.</remarks>
    public static double Recovery(double rate, int years) => 1 / DiscountFactors.Uniform(rate, (int)Require.InRange(years, 1, int.MaxValue));

    /// <summary>Equivalent annual cost (or worth) of a present value.</summary>
    /// <param name="present">Present value, such as a life-cycle cost.</param>
    /// <param name="rate">Discount rate. [unitless a year, above −1]</param>
    /// <param name="years">Years it covers. [count, 1 or more]</param>
    public static Money Of(Money present, double rate, int years) => present * Recovery(rate, years);

    /// <summary>Cost of conserved energy: what a kilowatt-hour not used costs. Compare it with the price of one that is.</summary>
    /// <param name="worth">What is invested, its rate and years.</param>
    /// <param name="savedPerYear">Energy saved each year, plant included.</param>
    /// <returns>Price; below zero where replacements avoided outweigh first cost; null when no energy is saved.</returns>
    /// <remarks>
    /// Invested · UCR / kWh, S-98. At a nominal rate it compares with the mean price over the years, at a real rate with the price of today.
    /// </remarks>
    public static EnergyPrice? CostOfConservedEnergy(InvestmentWorth worth, Energy savedPerYear) => savedPerYear > Energy.Zero
        ? EnergyPrice.FromPerKilowattHour(Of(worth.Invested, worth.Rate, worth.Years).Units / savedPerYear.KilowattHours)
        : null;
}
