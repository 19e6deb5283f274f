using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Web.Features.Tariffs;

/// <summary>One average price in place of a tariff.</summary>
public static class BlendedPrice
{
    /// <summary>A price to start a flat tariff from: the bills of the year over their kilowatt-hours, or the first price when there are none.</summary>
    public static EnergyPrice Typical(Tariff tariff, StudyResult? result)
    {
        var lines = (result?.Now.Bills ?? []).SelectMany(bill => bill.Lines).ToList();
        var kilowattHours = lines.Where(line => line.Kind == BillLineKind.Energy).Sum(line => line.Quantity);
        var amount = lines.Sum(line => line.Amount.Units);
        return kilowattHours > 0 && amount >= 0
            ? EnergyPrice.FromPerKilowattHour(Math.Round(amount / kilowattHours, 4))
            : tariff.Energy[0].Blocks[0].Price;
    }
}
