using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Billing;

/// <summary>Energy by charge and block: one line for each block that is used (E-07, E-20).</summary>
internal static class EnergyLines
{
    public static IEnumerable<BillLine> Of(BillBasis basis) => basis.Tariff.Energy.SelectMany((charge, i) =>
        basis.Month.Energy[i] is { } energy ? Blocks(basis, i, energy) : []);

    private static IEnumerable<BillLine> Blocks(BillBasis basis, int number, Energy energy)
    {
        var charge = basis.Tariff.Energy[number];
        var size = BlockSize(basis, charge) * basis.EnergyShare(number);
        var below = Energy.Zero;
        for (var i = 0; i < charge.Blocks.Count; i++)
        {
            var (upTo, price) = charge.Blocks[i];
            var inBlock = (upTo is { } end && end * size < energy ? end * size : energy) - below;
            if (i > 0 && inBlock <= Energy.Zero)
                continue;
            var name = charge.Blocks.Count > 1 ? $"{charge.Name}, block {i + 1}" : charge.Name;
            yield return basis.Line(BillLineKind.Energy, number, name, new(inBlock.KilowattHours, "kWh", price.PerKilowattHour));
            below += inBlock;
        }
    }

    /// <summary>How many of the charge's block units a whole month holds. [kW, days or 1]</summary>
    private static double BlockSize(BillBasis basis, EnergyCharge charge) => charge.BlockUnit switch
    {
        BlockUnit.PerKilowatt => basis.DemandOf(charge.BlocksByDemand).Kilowatts,
        BlockUnit.PerDay => basis.Month.Days,
        _ => 1,
    };
}
