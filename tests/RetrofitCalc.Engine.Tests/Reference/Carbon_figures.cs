using System.Text.Json;
using RetrofitCalc.Engine.Carbon;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Economics;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Samples;

namespace RetrofitCalc.Engine.Tests.Reference;

internal static class Carbon_figures
{
    [ReferenceTopic("egrid_co2e_build")]
    private static double Equivalent(JsonElement i) => GridFactors.Equivalent(i.Number("co2"), i.Number("ch4"), i.Number("n2o"));

    [ReferenceTopic("lb_mwh_to_kg_kwh")]
    private static double KilogramsOfOneKilowattHour(JsonElement i) => Kilograms(1, i);

    [ReferenceTopic("avoided_co2e_kg")]
    private static double KilogramsAvoided(JsonElement i) => Kilograms(i.Number("kwh"), i);

    [ReferenceTopic("mercury_g")]
    private static double Mercury(JsonElement i) => RetiredLamps.MercuryIn(i.Number("lamps"), i.Number("mg_each"));

    /// <summary>The first cost of taking out so many lamps of that length, recycled at a price by the foot.</summary>
    [ReferenceTopic("recycling_cost")]
    private static double Recycling(JsonElement i)
    {
        var setUp = SampleCatalogue.TwoT8;
        var line = SampleStudy.Line("racks", "room", setUp.Id, i.Count("lamps") / setUp.LampCount);
        var now = new FittedLine(line, SampleStudy.Room, new BallastedFitting(setUp, SampleCatalogue.All.Lamps.Single(lamp => lamp.Id == setUp.Lamp), []), line.Count!.Value);
        var after = now with { Fitting = new TubeFitting(SampleCatalogue.TubeT8, setUp.LampCount) };
        var option = new RetrofitOption
        {
            Id = "tubes",
            Name = "Tubes",
            Measures = [new(line.Id, new DirectWire(SampleCatalogue.TubeT8.Id))],
            Costs = new() { DisposalPerLamp = Money.FromUnits(i.Number("feet") * i.Number("usd_per_ft")) },
        };
        return FirstCosts.Gross(new Dictionary<string, FittedLine> { [line.Id] = now }, [after], option).Disposal.Units;
    }

    private static double Kilograms(double kilowattHours, JsonElement i)
    {
        var region = GridFactors.Find(i.GetProperty("region").GetString())!;
        Assert.Equal(i.Number("lb_mwh"), region.Average);
        return GridFactors.Kilograms(Energy.FromKilowattHours(kilowattHours), region.Average);
    }
}
