using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Billing;

/// <summary>Bills by a tariff, line by line, each line rounded to cents, half a cent away from zero.</summary>
public static class BillCalculation
{
    /// <summary>The bills of a year. In a steady year a ratchet that looks back past the first month finds the same year's later months.</summary>
    /// <param name="tariff">The tariff.</param>
    /// <param name="months">Twelve consecutive billing months.</param>
    /// <param name="terms">Price factor, power factor and the year before.</param>
    public static IReadOnlyList<MonthlyBill> Year(Tariff tariff, IReadOnlyList<MeteredMonth> months, BillTerms terms)
    {
        var priceFactor = terms.PriceFactor;
        var before = terms.Before ?? months;
        return [.. months.Select((month, index) => new MonthlyBill(month.Month, [
            .. tariff.Fixed.Select((charge, i) => Line(BillLineKind.Fixed, charge.Name, 1, "month", charge.Amount.Units * priceFactor) with { Charge = i }),
            .. tariff.Energy.SelectMany((charge, i) => month.Energy[i] is { } energy
                ? EnergyLines(charge, energy, priceFactor).Select(line => line with { Charge = i })
                : []),
            .. tariff.Demand.SelectMany((charge, i) => month.Peaks[i] is { } peak
                ? [DemandLine(charge, BilledDemand(charge, peak, EarlierPeaks(months, before, index, i, charge)), priceFactor) with { Charge = i }]
                : Array.Empty<BillLine>()),
        ]) { First = month.First, Last = month.Last })];
    }

    /// <summary>Demand billed: the month's peak, or a share of the highest earlier measured peak if that is more (E-08).</summary>
    /// <param name="charge">The charge.</param>
    /// <param name="peak">This month's highest window average.</param>
    /// <param name="earlierPeaks">Measured, not billed, peaks of the months the ratchet looks at.</param>
    public static Power BilledDemand(DemandCharge charge, Power peak, IEnumerable<Power> earlierPeaks) =>
        charge.Ratchet is { } ratchet
            ? earlierPeaks.Select(earlier => earlier * ratchet.Share).Append(peak).Max()
            : peak;

    /// <summary>Lines of one energy charge, one for each block that is used (E-07).</summary>
    /// <param name="charge">The charge.</param>
    /// <param name="energy">Energy under it in the month.</param>
    /// <param name="priceFactor">Factor on every price. [unitless, above 0]</param>
    public static IEnumerable<BillLine> EnergyLines(EnergyCharge charge, Energy energy, double priceFactor = 1)
    {
        var below = Energy.Zero;
        for (var i = 0; i < charge.Blocks.Count; i++)
        {
            var (upTo, price) = charge.Blocks[i];
            var inBlock = (upTo is { } end && end < energy ? end : energy) - below;
            if (i > 0 && inBlock <= Energy.Zero)
                yield break;
            var name = charge.Blocks.Count > 1 ? $"{charge.Name}, block {i + 1}" : charge.Name;
            yield return Line(BillLineKind.Energy, name, inBlock.KilowattHours, "kWh", price.PerKilowattHour * priceFactor);
            below += inBlock;
        }
    }

    /// <summary>Line of one demand charge.</summary>
    /// <param name="charge">The charge.</param>
    /// <param name="billed">Demand billed.</param>
    /// <param name="priceFactor">Factor on every price. [unitless, above 0]</param>
    public static BillLine DemandLine(DemandCharge charge, Power billed, double priceFactor = 1) =>
        Line(BillLineKind.Demand, charge.Name, billed.Kilowatts, "kW", charge.Price.PerKilowatt * priceFactor);

    /// <summary>Rounds to cents, half a cent away from zero, as printed: 3404.025 is half a cent although no binary number is exactly that.</summary>
    /// <param name="amount">The amount. [currency]</param>
    public static Money ToCents(double amount) =>
        Money.FromUnits((double)Math.Round((decimal)amount, 2, MidpointRounding.AwayFromZero));

    private static BillLine Line(BillLineKind kind, string name, double quantity, string unit, double unitPrice) =>
        new(kind, name, quantity, unit, unitPrice, ToCents(quantity * unitPrice));

    private static IEnumerable<Power> EarlierPeaks(
        IReadOnlyList<MeteredMonth> months, IReadOnlyList<MeteredMonth> before, int index, int charge, DemandCharge demand) =>
        from back in Enumerable.Range(1, Math.Min(demand.Ratchet?.Months ?? 0, months.Count - 1))
        let earlier = index - back
        let peak = (earlier >= 0 ? months[earlier] : before[earlier + months.Count]).Peaks[charge]
        where peak is not null
        select peak.Value;
}
