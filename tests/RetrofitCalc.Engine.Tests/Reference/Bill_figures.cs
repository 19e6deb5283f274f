using System.Text.Json;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Samples;

namespace RetrofitCalc.Engine.Tests.Reference;

internal static class Bill_figures
{
    [ReferenceTopic("bill_energy_line")]
    private static double EnergyLine(JsonElement i)
    {
        var tariff = Flat(0) with { Adjustments = [new() { Name = "Adjustment", Prices = [SampleTariff.Price(i.Number("rate"))] }] };
        return OneMonth.Bill(tariff, [i.Number("kwh")]).Total.Units;
    }

    [ReferenceTopic("bill_total")]
    private static double Total(JsonElement i)
    {
        string[] parts = ["customer", "energy", "adjust", "demand"];
        return OneMonth.Bill(Flat(0) with { Fixed = [.. parts.Select(part => Fixed(i.Number(part)))] }, [0]).Total.Units;
    }

    [ReferenceTopic("bill_demand_line")]
    private static double DemandLine(JsonElement i)
    {
        // Exactly half a cent, 3404.025: the source prints it rounded down, our bills round it up; so the amount before rounding is compared.
        var line = OneMonth.Bill(Flat(0) with { Demand = [Demand(i.Number("rate"))] }, [0], [i.Number("kw")]).Lines[^1];
        Assert.Equal(3404.03, line.Amount.Units, 1e-9);
        return line.Quantity * line.UnitPrice;
    }

    [ReferenceTopic("flat_bill")]
    private static double FlatBill(JsonElement i) =>
        OneMonth.Bill(Flat(i.Number("rate")) with { Fixed = [Fixed(i.Number("fixed"))] }, [i.Number("kwh")]).Total.Units;

    [ReferenceTopic("tou_bill"), ReferenceTopic("tou_shift_literal_wording")]
    private static double TimeOfUse(JsonElement i)
    {
        var tariff = Flat(0) with { Fixed = [Fixed(i.Number("fixed"))], Energy = [.. Flat(i.Number("on")).Energy, .. Flat(i.Number("off")).Energy] };
        var on = i.Number("kwh") * i.Number("on_frac");
        return OneMonth.Bill(tariff, [on, i.Number("kwh") - on]).Total.Units;
    }

    [ReferenceTopic("tiered_bill_with_tax")]
    private static double TieredWithTax(JsonElement i)
    {
        var blocks = new List<EnergyBlock>();
        foreach (var tier in i.GetProperty("tiers").EnumerateArray())
        {
            var size = tier[0].ValueKind == JsonValueKind.Null ? (double?)null : tier[0].GetDouble();
            var below = blocks.Count > 0 ? blocks[^1].UpTo!.Value.KilowattHours : 0;
            blocks.Add(new(size is { } kwh ? Energy.FromKilowattHours(below + kwh) : null, SampleTariff.Price(tier[1].GetDouble())));
        }
        return OneMonth.Bill(
            Flat(0) with
            {
                Fixed = [Fixed(i.Number("base"))],
                Energy = [SampleTariff.Charge("Energy", new(), [.. blocks])],
                Adjustments = [new() { Name = "Power cost", Prices = [SampleTariff.Price(i.Number("adder"))] }],
                Taxes = [new("Tax", i.Number("tax"))],
            },
            [i.Number("kwh")]).Total.Units;
    }

    [ReferenceTopic("municipal_bill")]
    private static double Municipal(JsonElement i) => WithDemand(i, i.Number("customer"));

    [ReferenceTopic("municipal_bill_primary")]
    private static double MunicipalPrimary(JsonElement i) => WithDemand(i, i.Number("fixed"));

    [ReferenceTopic("ratchet_min_kw")]
    private static double Ratchet(JsonElement i)
    {
        var tariff = Flat(0) with { Demand = [Demand(1) with { Ratchet = new(i.Number("ratchet")) }] };
        return OneMonth.Bill(tariff, OneMonth.Meter(tariff, [0], [0]), earlierKilowatts: i.Number("peak")).Lines[^1].Quantity;
    }

    [ReferenceTopic("avoided_kwh_bill_delta")]
    private static double Avoided(JsonElement i)
    {
        double Cost(double kwh, double kw) => OneMonth.Bill(Flat(i.Number("erate")) with { Demand = [Demand(i.Number("drate"))] }, [kwh], [kw]).Total.Units;
        return Cost(i.Number("kwh"), 0) + i.Number("months") * Cost(0, i.Number("kw"));
    }

    private static double WithDemand(JsonElement i, double fixedAmount) => OneMonth.Bill(
        Flat(i.Number("erate")) with { Fixed = [Fixed(fixedAmount)], Demand = [Demand(i.Number("drate"))] }, [i.Number("kwh")], [i.Number("kw")]).Total.Units;

    private static Tariff Flat(double rate) => Tariff.Flat(SampleTariff.Price(rate));

    private static DemandCharge Demand(double rate) => new() { Name = "Demand", Price = DemandPrice.FromPerKilowatt(rate) };

    private static FixedCharge Fixed(double amount) => new("Fixed", Money.FromUnits(amount));
}
