using MathNet.Numerics.RootFinding;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Economics;

/// <summary>Rates at which a row of amounts is worth nothing: ASTM E1057 (E-17).</summary>
public static class RateOfReturn
{
    /// <summary>−100 %, as near as rounding can tell.</summary>
    private const double LossOfEverything = -1 + 1e-9;

    /// <summary>Every internal rate of return above −100 %, lowest first: none, one or several.</summary>
    /// <param name="flows">Amounts, year 0 first.</param>
    /// <remarks>
    /// With x = 1/(1+r) the net present value is a polynomial in x, and each positive root is a rate. Roots are bracketed
    /// between the turning points, which are the roots of the derivative, found the same way; so none is missed. A row that
    /// never changes sign has no rate.
    /// </remarks>
    public static IReadOnlyList<double> All(IReadOnlyList<Money> flows) =>
        [.. PositiveRoots.Of([.. flows.Select(flow => flow.Units)]).Select(x => 1 / x - 1).Where(rate => rate > LossOfEverything).Order()];

    /// <summary>Rate of dated amounts; null unless they change sign exactly once, where one rate is certain.</summary>
    /// <param name="flows">Amounts with their days, the earliest first.</param>
    public static double? OfDated(IReadOnlyList<DatedAmount> flows)
    {
        var signs = flows.Select(flow => Math.Sign(flow.Amount.Units)).Where(sign => sign != 0).ToList();
        if (signs.Zip(signs.Skip(1)).Count(pair => pair.First != pair.Second) != 1) return null;
        double Worth(double rate) => PresentValue.OfDated(rate, flows).Units;
        return Brent.TryFindRoot(Worth, -0.9999, 1e6, 1e-12, 500, out var root) ? root : null;
    }

    /// <summary>Modified rate: payments brought to the start at one rate, receipts to the end at another.</summary>
    /// <param name="flows">Amounts, year 0 first.</param>
    /// <param name="financeRate">Rate paid on payments. [unitless a year]</param>
    /// <param name="reinvestRate">Rate earned on receipts. [unitless a year]</param>
    /// <returns>The rate; null unless there are both payments and receipts.</returns>
    public static double? Modified(IReadOnlyList<Money> flows, double financeRate, double reinvestRate)
    {
        var paid = PresentValue.Of(financeRate, [.. flows.Select(f => f < Money.Zero ? f : Money.Zero)]).Units;
        var received = PresentValue.Of(reinvestRate, [.. flows.Select(f => f > Money.Zero ? f : Money.Zero)]).Units;
        if (paid == 0 || received == 0) return null;
        var years = flows.Count - 1;
        return Math.Pow(received * Math.Pow(1 + reinvestRate, years) / -paid, 1.0 / years) - 1;
    }
}
