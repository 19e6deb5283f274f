using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Web.Features.Tariffs;

/// <summary>What an average price per kilowatt-hour would make of the same saving.</summary>
/// <param name="Price">Bills of the year over kilowatt-hours of the year.</param>
/// <param name="NotEnergyShare">Share of the bill that is not billed by the kilowatt-hour.</param>
/// <param name="ByPrice">Saving at the average price.</param>
/// <param name="ByBills">Saving as the difference of the bills.</param>
public sealed record BlendedPrice(EnergyPrice Price, double NotEnergyShare, Money ByPrice, Money ByBills)
{
    /// <summary>How far the average price is off. [share of the saving by bills]</summary>
    public double? Off => ByBills.Units == 0 ? null : (ByPrice - ByBills) / ByBills;

    /// <summary>Null when nothing is billed, or no option is chosen.</summary>
    public static BlendedPrice? Of(StudyResult result)
    {
        if (result.Chosen is not { } option) return null;
        var (now, after) = (Totals.Of(result.Now.Bills), Totals.Of(option.After.Bills));
        if (now.KilowattHours <= 0 || now.Amount.Units <= 0) return null;
        var price = now.Amount.Units / now.KilowattHours;
        return new(
            EnergyPrice.FromPerKilowattHour(price), 1 - (now.ForEnergy / now.Amount),
            Money.FromUnits((now.KilowattHours - after.KilowattHours) * price), now.Amount - after.Amount);
    }

    /// <summary>A price to start a flat tariff from: the average of the bills, or the first price when there are none.</summary>
    public static EnergyPrice Typical(Tariff tariff, StudyResult? result)
    {
        var now = Totals.Of(result?.Now.Bills ?? []);
        return now is { KilowattHours: > 0, Amount.Units: >= 0 }
            ? EnergyPrice.FromPerKilowattHour(Math.Round(now.Amount.Units / now.KilowattHours, 4))
            : tariff.Energy[0].Blocks[0].Price;
    }

    private sealed record Totals(double KilowattHours, Money ForEnergy, Money Amount)
    {
        public static Totals Of(IReadOnlyList<MonthlyBill> bills)
        {
            var lines = bills.SelectMany(b => b.Lines).ToList();
            var energy = lines.Where(l => l.Kind == BillLineKind.Energy).ToList();
            return new(energy.Sum(l => l.Quantity), Sum(energy), Sum(lines));
        }

        private static Money Sum(IEnumerable<BillLine> lines) => lines.Aggregate(Money.Zero, (sum, l) => sum + l.Amount);
    }
}
