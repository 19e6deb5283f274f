using System.Globalization;
using RetrofitCalc.Engine.Billing;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Reports;
using RetrofitCalc.Web.Features.Tariffs.Clauses;
using RetrofitCalc.Web.Features.Tariffs.Demands;
using RetrofitCalc.Web.Features.Tariffs.Periods;

namespace RetrofitCalc.Web.Features.Tariffs.Library;

/// <summary>A tariff to be looked at before it is used: what it charges, in words.</summary>
/// <param name="Charge">Name of the charge or clause.</param>
/// <param name="Price">What it costs.</param>
/// <param name="When">When it holds.</param>
public sealed record TariffFact(string Charge, string Price, string When)
{
    /// <summary>All of a tariff, in the order of a bill.</summary>
    public static IReadOnlyList<TariffFact> Of(Tariff tariff, CultureInfo culture)
    {
        var text = new QuantityText(culture.Name, tariff.Currency, UnitSystem.Metric);
        return
        [
            .. tariff.Fixed.Select(c => new TariffFact(c.Name, $"{text.Cents(c.Amount)} a {(c.Per == ChargedPer.Day ? "day" : "month")}", "")),
            .. EnergyPeriod.Of(tariff.Energy).Select(p => new TariffFact(p.Price.Name, Blocks(p.Price, text), string.Join(" · ", p.Charges.Take(4).Select(c => HoursText.Of(tariff.Energy[c].When, culture, "all other hours"))))),
            .. tariff.Adjustments.Select(a => new TariffFact(a.Name, string.Join("; ", a.Prices.Select(p => text.Price(p))), HoursText.Of(a.When, culture, "all hours"))),
            .. tariff.Demand.Select(d => new TariffFact(d.Name, $"{text.Price(d.Price)}{(DemandText.Details(d, text) is var more && more != "none" ? "; " + more : "")}", $"{HoursText.Of(d.When, culture, "all hours")}; average over {d.WindowMinutes} min")),
            .. Clauses(tariff, text),
        ];
    }

    private static IEnumerable<TariffFact> Clauses(Tariff tariff, QuantityText text)
    {
        if (tariff.PowerFactor is { } clause) yield return new("Power factor", PowerFactorKinds.Name(PowerFactorKinds.Of(clause)), "");
        if (tariff.LoadFactorCredit is { } credit) yield return new(credit.Name, $"{text.Price(credit.PricePerKilowatt)} and hour", $"above {text.Number(credit.AboveHours)} h of use");
        if (tariff.MinimumBill is { } least) yield return new("Minimum bill", $"{text.Cents(least)} a month", "");
        foreach (var tax in tariff.Taxes) yield return new(tax.Name, text.Percent(tax.Rate, 2), tax.On.Count == 0 ? "on all lines" : $"on {string.Join(", ", tax.On)}");
        if (tariff.Holidays.Count > 0) yield return new("Holidays", $"{tariff.Holidays.Count} billed as weekend", "");
    }

    private static string Blocks(EnergyCharge price, QuantityText text) =>
        string.Join(", ", price.Blocks.Select(b => b.UpTo is { } end ? $"{text.Price(b.Price)} to {text.KilowattHours(end)}{Unit(price.BlockUnit)}" : price.Blocks.Count > 1 ? $"then {text.Price(b.Price)}" : text.Price(b.Price)));

    private static string Unit(BlockUnit unit) => unit switch { BlockUnit.PerKilowatt => " per kW", BlockUnit.PerDay => " a day", _ => "" };
}
