using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Reports;
using RetrofitCalc.Web.Charts;

namespace RetrofitCalc.Web.Features.Results.Figures;

/// <summary>Each charge of the electricity bill over the year, now and proposed.</summary>
public static class BillChart
{
    public static ChartFigure Of(BillSaving bill, QuantityText text)
    {
        List<ChargeSaving> charges = [.. bill.Charges.Where(charge => charge.Now != Money.Zero || charge.After != Money.Zero)];
        return new ChartFigure(Finding(charges, bill.Total, text),
            $"Each charge of the whole meter’s bill over a steady year, now and proposed, in {text.Currency}.",
            $"{BillWords.Finding(bill, text)}. Each charge in the table below.",
            Spec(charges, text),
            new ChartTable(["Charge", "Now", "Proposed", "Saved"],
                [.. charges.Select(c => new[] { c.Name, text.Cents(c.Now), text.Cents(c.After), text.Cents(c.Saving) })]))
        {
            Legend = [new(Ink.Now, "now"), new(Ink.Proposed, "proposed")],
        };
    }

    private static string Finding(List<ChargeSaving> charges, Money total, QuantityText text)
    {
        if (total <= Money.Zero || charges.Count == 0) return "No charge of the bill falls enough to lower it";
        var most = charges.MaxBy(charge => charge.Saving)!;
        var still = charges.Where(charge => charge.Saving == Money.Zero).ToList();
        var rest = still.Count == 1 ? $"; {still[0].Name} does not move" : "";
        return most.Saving >= total ? $"The whole saving is on {most.Name}" : $"{most.Name} brings {text.Percent(most.Saving / total)} of the saving{rest}";
    }

    private static ChartSpec Spec(List<ChargeSaving> charges, QuantityText text)
    {
        ChartSeries Side(string name, Ink ink, Func<ChargeSaving, Money> side) =>
            new(name, ink, [.. charges.Select((charge, i) => new ChartPoint(side(charge).Units, i, text.Money(side(charge))))], name);
        var amounts = charges.SelectMany(charge => new[] { charge.Now.Units, charge.After.Units }).ToList();
        return new ChartSpec(ChartKind.Bars, [Side("now", Ink.Now, c => c.Now), Side("proposed", Ink.Proposed, c => c.After)])
        {
            Groups = [.. charges.Select(charge => new[] { charge.Name })],
            Across = new ChartAxis(amounts.DefaultIfEmpty(0).Min(), amounts.DefaultIfEmpty(1).Max(), []),
        };
    }
}
