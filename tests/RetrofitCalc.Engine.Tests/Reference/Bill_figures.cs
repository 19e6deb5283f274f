using System.Text.Json;
using NodaTime;
using RetrofitCalc.Engine.Billing;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Samples;

namespace RetrofitCalc.Engine.Tests.Reference;

internal static class Bill_figures
{
    private static readonly TariffHours Always = new();

    [ReferenceTopic("bill_energy_line")]
    private static double EnergyLine(JsonElement i)
    {
        // The second published line is a credit; prices are never negative, so it is billed as its mirror image.
        var rate = i.Number("rate");
        return Math.Sign(rate) * Bill([Charge("Energy", Math.Abs(rate))], [Energy.FromKilowattHours(i.Number("kwh"))]).Total.Units;
    }

    [ReferenceTopic("bill_total")]
    private static double Total(JsonElement i)
    {
        string[] parts = ["customer", "energy", "adjust", "demand"];
        return Bill([Charge("Energy", 0)], [Energy.Zero], fixedCharges: [.. parts.Select(part => new FixedCharge(part, Money.FromUnits(i.Number(part))))]).Total.Units;
    }

    [ReferenceTopic("bill_demand_line")]
    private static double DemandLine(JsonElement i)
    {
        // Exactly half a cent, 3404.025: the source prints it rounded down, our bills round it up; so the amount before rounding is compared.
        var line = BillCalculation.DemandLine(Demand(i.Number("rate")), Power.FromKilowatts(i.Number("kw")));
        Assert.Equal(3404.03, line.Amount.Units, 1e-9);
        return line.Quantity * line.UnitPrice;
    }

    [ReferenceTopic("flat_bill")]
    private static double Flat(JsonElement i) =>
        Bill([Charge("Energy", i.Number("rate"))], [Energy.FromKilowattHours(i.Number("kwh"))], fixedCharges: [Fixed(i.Number("fixed"))]).Total.Units;

    [ReferenceTopic("tou_bill"), ReferenceTopic("tou_shift_literal_wording")]
    private static double TimeOfUse(JsonElement i)
    {
        var energy = Energy.FromKilowattHours(i.Number("kwh"));
        var on = energy * i.Number("on_frac");
        return Bill([Charge("On-peak", i.Number("on")), Charge("Off-peak", i.Number("off"))], [on, energy - on], fixedCharges: [Fixed(i.Number("fixed"))]).Total.Units;
    }

    [ReferenceTopic("municipal_bill")]
    private static double Municipal(JsonElement i) => WithDemand(i, i.Number("customer"));

    [ReferenceTopic("municipal_bill_primary")]
    private static double MunicipalPrimary(JsonElement i) => WithDemand(i, i.Number("fixed"));

    [ReferenceTopic("ratchet_min_kw")]
    private static double Ratchet(JsonElement i) => BillCalculation.BilledDemand(
        Demand(1) with { Ratchet = new(i.Number("ratchet")) }, Power.Zero, [Power.FromKilowatts(i.Number("peak"))]).Kilowatts;

    [ReferenceTopic("avoided_kwh_bill_delta")]
    private static double Avoided(JsonElement i) =>
        Bill([Charge("Energy", i.Number("erate"))], [Energy.FromKilowattHours(i.Number("kwh"))]).Total.Units
        + i.Number("months") * BillCalculation.DemandLine(Demand(i.Number("drate")), Power.FromKilowatts(i.Number("kw"))).Amount.Units;

    private static double WithDemand(JsonElement i, double fixedAmount) => Bill(
        [Charge("Energy", i.Number("erate"))], [Energy.FromKilowattHours(i.Number("kwh"))],
        [Fixed(fixedAmount)], [Demand(i.Number("drate"))], [Power.FromKilowatts(i.Number("kw"))]).Total.Units;

    private static MonthlyBill Bill(
        IReadOnlyList<EnergyCharge> charges, IReadOnlyList<Energy> energy, IReadOnlyList<FixedCharge>? fixedCharges = null,
        IReadOnlyList<DemandCharge>? demand = null, IReadOnlyList<Power>? peaks = null) => BillCalculation.Year(
            new Tariff { Name = "Published", Fixed = fixedCharges ?? [], Energy = charges, Demand = demand ?? [] },
            [new MeteredMonth(new YearMonth(2027, 1), [.. energy.Select(e => (Energy?)e)], [.. (peaks ?? []).Select(p => (Power?)p)])], BillTerms.Steady).Single();

    private static EnergyCharge Charge(string name, double rate) => SampleTariff.Charge(name, Always, new EnergyBlock(null, SampleTariff.Price(rate)));

    private static DemandCharge Demand(double rate) => new() { Name = "Demand", Price = DemandPrice.FromPerKilowatt(rate) };

    private static FixedCharge Fixed(double amount) => new("Fixed", Money.FromUnits(amount));
}
