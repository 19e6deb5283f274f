using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Engine.Billing;

/// <summary>What the lines before taxes lack to the minimum bill (E-22).</summary>
internal static class MinimumLine
{
    /// <summary>Name of the line, by which a tax may name it.</summary>
    public const string Name = "Minimum bill";

    public static IEnumerable<BillLine> Of(BillBasis basis, IReadOnlyList<BillLine> lines)
    {
        if (basis.Tariff.MinimumBill is not { } minimum)
            yield break;
        var missing = BillRounding.Amount(minimum.Units * basis.Terms.PriceFactor - lines.Sum(line => line.Amount.Units), basis.Tariff.AmountDecimals);
        if (missing > Money.Zero)
            yield return basis.PlainLine(BillLineKind.Minimum, 0, Name, new(missing.Units, basis.Tariff.Currency, 1));
    }
}
