using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Web.Shared;

namespace RetrofitCalc.Web.Features.Tariffs.Clauses;

/// <summary>Changes of what stands beside energy and demand on a bill: pure functions of the study.</summary>
public static class ClauseEdits
{
    public static Study Adjustment(Study study, int index, Func<EnergyAdjustment, EnergyAdjustment> change) =>
        TariffEdits.With(study, t => t with { Adjustments = t.Adjustments.At(index, change) });

    public static Tariff AddAdjustment(Tariff tariff) => tariff with
    {
        Adjustments = [.. tariff.Adjustments, new EnergyAdjustment { Name = Numbered("Fuel adjustment", tariff.Adjustments.Count), Prices = [EnergyPrice.Zero] }],
    };

    /// <summary>One price becomes twelve of the same, or twelve become January's.</summary>
    public static EnergyAdjustment ByMonth(EnergyAdjustment adjustment, bool byMonth) => adjustment with
    {
        Prices = byMonth ? [.. Enumerable.Range(0, 12).Select(m => PriceOf(adjustment, m))] : [PriceOf(adjustment, 0)],
    };

    public static Study MonthPrice(Study study, int index, int month, EnergyPrice price) =>
        Adjustment(study, index, a => a with { Prices = a.Prices.At(month, _ => price) });

    public static Study Tax(Study study, int index, Func<BillTax, BillTax> change) =>
        TariffEdits.With(study, t => t with { Taxes = t.Taxes.At(index, change) });

    public static Tariff AddTax(Tariff tariff) =>
        tariff with { Taxes = [.. tariff.Taxes, new BillTax(Numbered("Tax", tariff.Taxes.Count), 0)] };

    public static Study Credit(Study study, Func<LoadFactorCredit, LoadFactorCredit> change) =>
        TariffEdits.With(study, t => t.LoadFactorCredit is { } credit ? t with { LoadFactorCredit = change(credit) } : t);

    public static Tariff AddCredit(Tariff tariff) =>
        tariff with { LoadFactorCredit = new LoadFactorCredit("Credit for hours of use", 400, DemandPrice.Zero) };

    private static EnergyPrice PriceOf(EnergyAdjustment adjustment, int month) =>
        adjustment.Prices.Count == 0 ? EnergyPrice.Zero : adjustment.Prices[Math.Min(month, adjustment.Prices.Count - 1)];

    private static string Numbered(string name, int others) => others == 0 ? name : $"{name} {others + 1}";
}
