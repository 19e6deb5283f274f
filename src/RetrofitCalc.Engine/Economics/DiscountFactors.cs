namespace RetrofitCalc.Engine.Economics;

/// <summary>Factors that bring amounts of different years to one point in time. End-of-year amounts.</summary>
/// <remarks>ASTM E917 names; 10 CFR 436 subpart A; NIST Handbook 135. Formulas from memory save where a source is named.</remarks>
public static class DiscountFactors
{
    /// <summary>Single present value: worth today of 1 due after some years.</summary>
    /// <param name="rate">Discount rate. [unitless a year, above −1]</param>
    /// <param name="years">Years until it is due. [years]</param>
    /// <remarks>SPV = (1+d)^−n</remarks>
    public static double Single(double rate, double years) => Math.Pow(1 + rate, -years);

    /// <summary>Uniform present value: worth today of 1 at the end of each year.</summary>
    /// <param name="rate">Discount rate. [unitless a year, above −1]</param>
    /// <param name="years">Number of years. [count]</param>
    /// <remarks>UPV = (1 − (1+d)^−n)/d; n when d is zero.</remarks>
    public static double Uniform(double rate, int years) => rate == 0 ? years : (1 - Single(rate, years)) / rate;

    /// <summary>Uniform present value of an amount that rises: 1 at prices of the start, already risen once by the end of year 1.</summary>
    /// <param name="rate">Discount rate. [unitless a year, above −1]</param>
    /// <param name="escalation">Rise of the amount. [unitless a year, above −1]</param>
    /// <param name="years">Number of years. [count]</param>
    /// <remarks>UPV* = (1+e)/(d−e) · (1 − ((1+e)/(1+d))^n), n when e = d: GSA P100 appendix. The study's own cash flow holds prices of the start through year 1 instead.</remarks>
    public static double UniformRising(double rate, double escalation, int years) =>
        Uniform((1 + rate) / (1 + escalation) - 1, years);

    /// <summary>Rise beyond general inflation.</summary>
    /// <param name="nominal">Nominal rise. [unitless a year]</param>
    /// <param name="inflation">General inflation. [unitless a year, above −1]</param>
    /// <remarks>e = (E − I)/(1 + I), GSA P100 appendix; the same holds for discount rates.</remarks>
    public static double Real(double nominal, double inflation) => (nominal - inflation) / (1 + inflation);
}
