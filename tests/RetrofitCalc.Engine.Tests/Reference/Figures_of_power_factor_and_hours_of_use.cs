using System.Text.Json;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Samples;

namespace RetrofitCalc.Engine.Tests.Reference;

internal static class Figures_of_power_factor_and_hours_of_use
{
    // The engine is told the power factor and finds the kilovars; so the published pair is checked both ways.
    [ReferenceTopic("power_factor")]
    private static double PowerFactor(JsonElement i)
    {
        var published = i.Number("kw") / Math.Sqrt(Square(i.Number("kw")) + Square(i.Number("kvar")));
        var kilovars = Reactive(i.Number("kw"), published, freeShare: 0, price: 1).Quantity;
        Assert.Equal(i.Number("kvar"), kilovars, 1e-9);
        return i.Number("kw") / Math.Sqrt(Square(i.Number("kw")) + Square(kilovars));
    }

    [ReferenceTopic("reactive_charge")]
    private static double ReactiveCharge(JsonElement i) =>
        Reactive(i.Number("kw"), powerFactor: 0.8, i.Number("allow"), i.Number("rate")).Amount.Units;

    [ReferenceTopic("pf_adjusted_demand")]
    private static double AdjustedDemand(JsonElement i) => Billed(new AddedPerPoint(0.90, 0.01), i, price: 1).Quantity;

    [ReferenceTopic("pf_target_demand")]
    private static double TargetDemand(JsonElement i) =>
        Billed(new TargetPowerFactor(i.Number("target")), i, i.Number("rate")).Amount.Units - i.Number("kw") * i.Number("rate");

    [ReferenceTopic("kva_demand")]
    private static double KilovoltAmperes(JsonElement i)
    {
        var line = Billed(new BilledInKilovoltAmperes(), i, i.Number("rate"));
        Assert.Equal("kVA", line.Unit);
        return line.Amount.Units;
    }

    [ReferenceTopic("hours_use_bill")]
    private static double HoursOfUse(JsonElement i) => OneMonth.Bill(
        PublishedTariffs.ColumbiaRiver, OneMonth.Meter(PublishedTariffs.ColumbiaRiver, [i.Number("kwh")], [i.Number("kw")]), i.Number("pf_pct") / 100).Total.Units;

    // Measured in kVA: a power factor of one makes kW and kVA the same number.
    [ReferenceTopic("ratchet_bill")]
    private static double Ratchet(JsonElement i) => OneMonth.Bill(
        PublishedTariffs.SouthWhitley, OneMonth.Meter(PublishedTariffs.SouthWhitley, [i.Number("kwh")], [i.Number("kva")]), 1, i.Number("max12")).Total.Units;

    [ReferenceTopic("load_factor_credit_bill")]
    private static double Credit(JsonElement i) => OneMonth.Bill(PublishedTariffs.LargePowerWithCredit, [i.Number("kwh")], [i.Number("kw"), i.Number("kw"), i.Number("kw")]).Total.Units;

    private static BillLine Reactive(double kilowatts, double powerFactor, double freeShare, double price) =>
        Line(new ReactiveAboveShare(freeShare, DemandPrice.FromPerKilowatt(price)), kilowatts, powerFactor, 0, BillLineKind.Reactive);

    private static BillLine Billed(PowerFactorClause clause, JsonElement i, double price) =>
        Line(clause, i.Number("kw"), i.Number("pf"), price, BillLineKind.Demand);

    private static BillLine Line(PowerFactorClause clause, double kilowatts, double powerFactor, double price, BillLineKind kind)
    {
        var tariff = Tariff.Flat(SampleTariff.Price(0)) with { PowerFactor = clause, Demand = [new() { Name = "Demand", Price = DemandPrice.FromPerKilowatt(price) }] };
        return OneMonth.Bill(tariff, OneMonth.Meter(tariff, [0], [kilowatts]), powerFactor).Lines.Single(line => line.Kind == kind);
    }

    private static double Square(double value) => value * value;
}
