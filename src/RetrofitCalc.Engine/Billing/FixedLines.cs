using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Billing;

/// <summary>Charges that do not depend on use, by month or by day.</summary>
internal static class FixedLines
{
    public static IEnumerable<BillLine> Of(BillBasis basis) => basis.Tariff.Fixed.Select((charge, i) =>
        basis.Line(BillLineKind.Fixed, i, charge.Name, charge.Per == ChargedPer.Day
            ? new(basis.Month.Days, "day", charge.Amount.Units)
            : new(1, "month", charge.Amount.Units)));
}
