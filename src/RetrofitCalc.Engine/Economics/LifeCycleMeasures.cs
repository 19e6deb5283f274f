using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Economics;

/// <summary>Measures of worth over the life of an investment: 10 CFR 436.19 to 436.22.</summary>
public static class LifeCycleMeasures
{
    /// <summary>Savings-to-investment ratio: present value of savings over present value of what is invested.</summary>
    /// <param name="savings">Present value of yearly savings.</param>
    /// <param name="invested">Present value of extra first cost and replacements, less what is left at the end.</param>
    /// <remarks>10 CFR 436.21; ASTM E964.</remarks>
    public static double SavingsToInvestment(Money savings, Money invested) => savings / invested;

    /// <summary>Adjusted internal rate of return, savings reinvested at the discount rate.</summary>
    /// <param name="savingsToInvestment">Savings-to-investment ratio. [unitless, 0 or more]</param>
    /// <param name="rate">Discount rate. [unitless a year]</param>
    /// <param name="years">Length of the study. [years]</param>
    /// <remarks>AIRR = (1+r)·SIR^(1/n) − 1: 10 CFR 436.22.</remarks>
    public static double AdjustedRateOfReturn(double savingsToInvestment, double rate, int years) =>
        (1 + rate) * Math.Pow(savingsToInvestment, 1.0 / years) - 1;

    /// <summary>Net savings: what keeping costs over the study less what the alternative costs.</summary>
    /// <param name="kept">Life-cycle cost of keeping.</param>
    /// <param name="alternative">Life-cycle cost of the alternative.</param>
    /// <remarks>10 CFR 436.20; ASTM E1074.</remarks>
    public static Money NetSavings(Money kept, Money alternative) => kept - alternative;

    /// <summary>Life-cycle cost: present value of everything an alternative costs.</summary>
    /// <param name="first">First cost, today.</param>
    /// <param name="yearly">Costs at the end of each year, year 1 first; what is left at the end counts against the last.</param>
    /// <param name="rate">Discount rate. [unitless a year]</param>
    /// <remarks>10 CFR 436.19.</remarks>
    public static Money LifeCycleCost(Money first, IReadOnlyList<Money> yearly, double rate) => PresentValue.Of(rate, [first, .. yearly]);
}
