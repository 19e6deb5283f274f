using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Billing;

/// <summary>Percentages of the lines before taxes, those of named charges or all (E-22).</summary>
internal static class TaxLines
{
    public static IEnumerable<BillLine> Of(BillBasis basis, IReadOnlyList<BillLine> lines) => basis.Tariff.Taxes.Select((tax, i) =>
    {
        var taxed = lines.Where(line => tax.On.Count == 0 || tax.On.Contains(ChargeName(basis.Tariff, line))).Sum(line => line.Amount.Units);
        return basis.PlainLine(BillLineKind.Tax, i, tax.Name, new(taxed, basis.Tariff.Currency, tax.Rate));
    });

    /// <summary>Lines of blocks carry more than the name of their charge.</summary>
    private static string ChargeName(Tariff tariff, BillLine line) => line.Kind switch
    {
        BillLineKind.Energy => tariff.Energy[line.Charge].Name,
        BillLineKind.Demand => tariff.Demand[line.Charge].Name,
        _ => line.Name,
    };
}
