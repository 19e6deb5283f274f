using CsCheck;
using NodaTime;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Tests.Billing;

/// <summary>Rules that need no second opinion, on generated tariffs and loads.</summary>
public class What_holds_of_any_bill
{
    private const string Zone = "America/New_York";

    private static readonly Gen<(Tariff Tariff, LocalDate[] Dates, uint Seed)> Sites =
        Gen.Select(AnyTariff.Generated, Any_tariff_billed_minute_by_minute.ShortMonths, Gen.UInt, (tariff, dates, seed) => (tariff with { Reading = new() { Dates = dates } }, dates, seed));

    // Which demand charge is "the first" is a matter of order, so only the order of energy charges, adjustments and fixed charges moves.
    [Fact]
    public void the_order_of_charges_changes_only_the_order_of_lines() => Sites.Sample(site =>
    {
        var (tariff, meter) = (site.Tariff, MeteredSite.Meter(site.Dates, Zone, 15, site.Seed));
        var turned = tariff with { Energy = [.. tariff.Energy.Reverse()], Adjustments = [.. tariff.Adjustments.Reverse()], Fixed = [.. tariff.Fixed.Reverse()] };
        foreach (var (bill, other) in Bills(tariff, meter).Zip(Bills(turned, meter)))
            Assert.Equal(bill.Lines.Select(Text).Order(), other.Lines.Select(Text).Order());
    }, iter: 100);

    [Fact]
    public void the_months_add_up_to_the_meter() => Sites.Sample(site =>
    {
        var meter = MeteredSite.Meter(site.Dates, Zone, 15, site.Seed);
        var billed = Bills(site.Tariff, meter).Sum(bill => Quantity(bill, BillLineKind.Energy));
        Assert.Equal(meter.Watts.Sum(watts => watts!.Value) / 4000, billed, 1e-6);
    }, iter: 100);

    // Two loads on two meters, and both on one: kilowatt-hours add up; peaks need not fall together, so together they are at most the sum.
    [Fact]
    public void a_load_split_in_two_and_added_back_changes_nothing_but_demand() => Sites.Sample(site =>
    {
        var tariff = site.Tariff with
        {
            PowerFactor = null, LoadFactorCredit = null, MinimumBill = null, Taxes = [],
            Demand = [.. site.Tariff.Demand.Select(charge => charge with { Ratchet = null, Minimum = null, Rounding = null })],
        };
        var (a, b) = (MeteredSite.Meter(site.Dates, Zone, 15, site.Seed), MeteredSite.Meter(site.Dates, Zone, 15, site.Seed + 1));
        var both = a with { Watts = [.. a.Watts.Zip(b.Watts, (x, y) => x + y)] };
        foreach (var ((one, other), together) in Bills(tariff, a).Zip(Bills(tariff, b)).Zip(Bills(tariff, both)))
        {
            foreach (var kind in new[] { BillLineKind.Energy, BillLineKind.Adjustment })
                Assert.Equal(Quantity(one, kind) + Quantity(other, kind), Quantity(together, kind), 1e-6);
            Assert.Equal(Quantity(one, BillLineKind.Fixed), Quantity(together, BillLineKind.Fixed));
            Assert.True(Quantity(together, BillLineKind.Demand) <= Quantity(one, BillLineKind.Demand) + Quantity(other, BillLineKind.Demand) + 1e-9);
        }
    }, iter: 100);

    [Fact]
    public void a_factor_on_prices_moves_every_price_and_no_quantity_and_no_tax_rate() => Sites.Sample(site =>
    {
        var study = MeteredSite.Of(site.Tariff with { Taxes = [], MinimumBill = null }, Zone, 0.9, MeteredSite.Meter(site.Dates, Zone, 15, site.Seed));
        foreach (var (line, dearer) in MeteredSite.Bills(study).Zip(MeteredSite.Bills(study, 1.25)).SelectMany(pair => pair.First.Lines.Zip(pair.Second.Lines)))
        {
            Assert.Equal((line.Name, line.Quantity), (dearer.Name, dearer.Quantity));
            Assert.Equal(line.UnitPrice * 1.25, dearer.UnitPrice, 1e-9);
        }
    }, iter: 50);

    private static IReadOnlyList<MonthlyBill> Bills(Tariff tariff, MeterYear meter) => MeteredSite.Bills(MeteredSite.Of(tariff, Zone, 0.9, meter));

    private static double Quantity(MonthlyBill bill, BillLineKind kind) => bill.Lines.Where(line => line.Kind == kind).Sum(line => line.Quantity);

    private static string Text(BillLine line) => FormattableString.Invariant($"{line.Kind} {line.Name}: {line.Quantity:0.###} {line.Unit} at {line.UnitPrice:0.######}");
}
