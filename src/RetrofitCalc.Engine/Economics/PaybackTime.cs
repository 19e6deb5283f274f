using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Engine.Economics;

/// <summary>Years until money spent has come back: 10 CFR 436.23, ASTM E1121 (E-15).</summary>
public static class PaybackTime
{
    /// <summary>Years until the running sum reaches zero, spread evenly over the year in which it does.</summary>
    /// <param name="flows">Amounts, year 0 first; discounted beforehand for the discounted payback.</param>
    /// <remarks>The first recovery is reported; when a later amount takes the sum below zero again, that is said.</remarks>
    public static Payback Of(IReadOnlyList<Money> flows)
    {
        double? years = null;
        var sum = Money.Zero;
        for (var year = 0; year < flows.Count; year++)
        {
            var before = sum;
            sum += flows[year];
            if (years is null && sum >= Money.Zero) years = year == 0 ? 0 : year - 1 + -before / flows[year];
            else if (years is not null && sum.Units < -1e-9) return new Payback(years, LostAgain: true);
        }
        return new Payback(years);
    }

    /// <summary>First cost over a level yearly saving.</summary>
    /// <param name="firstCost">First cost.</param>
    /// <param name="annualSaving">Saving of each year.</param>
    /// <param name="studyYears">A payback beyond these years is reported as never. [years]</param>
    public static Payback Plain(Money firstCost, Money annualSaving, int studyYears)
    {
        if (firstCost <= Money.Zero) return new Payback(0);
        if (annualSaving <= Money.Zero) return new Payback(null);
        var years = firstCost / annualSaving;
        return new Payback(years <= studyYears ? years : null);
    }

    /// <summary>Part of first cost that comes back in a year: one over payback, and as steadily below that when it is never reached.</summary>
    /// <param name="flows">Amounts, year 0 first.</param>
    /// <returns>Share a year; null when nothing is spent. [unitless a year]</returns>
    /// <remarks>
    /// A study of n years with payback y recovers 1/y a year. Without payback it recovers (sum of later flows)/(n · first cost),
    /// which meets 1/n at the same point, so that a range can cross from "in nine years" to "never" without a jump.
    /// </remarks>
    public static double? RecoveredShare(IReadOnlyList<Money> flows)
    {
        if (flows[0] >= Money.Zero) return null;
        if (Of(flows).Years is { } years) return 1 / years;
        var later = flows.Skip(1).Aggregate(Money.Zero, (sum, flow) => sum + flow);
        return later / -flows[0] / (flows.Count - 1);
    }
}
