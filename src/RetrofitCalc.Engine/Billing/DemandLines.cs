using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Billing;

/// <summary>Billed demand by charge and block. Where a season covers part of the month, the price counts by its share of the days.</summary>
internal static class DemandLines
{
    public static IEnumerable<BillLine> Of(BillBasis basis) => basis.Tariff.Demand.SelectMany((charge, i) =>
        basis.Demand[i] is { } billed ? Blocks(basis, i, billed) : []);

    private static IEnumerable<BillLine> Blocks(BillBasis basis, int number, Power billed)
    {
        var charge = basis.Tariff.Demand[number];
        var unit = PowerFactorRule.DemandUnit(basis.Tariff.PowerFactor, charge);
        var below = Power.Zero;
        for (var i = 0; i <= charge.Blocks.Count; i++)
        {
            var (upTo, price) = i < charge.Blocks.Count ? (charge.Blocks[i].UpTo, charge.Blocks[i].Price) : ((Power?)null, charge.Price);
            var inBlock = (upTo is { } end && end < billed ? end : billed) - below;
            if (i > 0 && inBlock <= Power.Zero)
                yield break;
            var name = charge.Blocks.Count > 0 ? $"{charge.Name}, block {i + 1}" : charge.Name;
            yield return basis.Line(BillLineKind.Demand, number, name, new(inBlock.Kilowatts, unit, price.PerKilowatt * basis.DemandShare(number)));
            below += inBlock;
        }
    }
}
