using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Billing;

/// <summary>
/// From measured peaks to billed demand (E-08): the month's peak, lifted by the ratchet, changed by the power factor, rounded, and
/// at least the minimum, in that order. Ratchets look at measured peaks, never at billed demand.
/// </summary>
internal sealed class BilledDemand(Tariff tariff, IReadOnlyList<MeteredMonth> months, BillTerms terms)
{
    /// <summary>Billed demand under each demand charge in one month; null where it is not in force.</summary>
    public IReadOnlyList<Power?> InMonth(int index) =>
        [.. tariff.Demand.Select((charge, i) => months[index].Peaks[i] is { } peak ? Billed(charge, Ratcheted(i, index, peak)) : (Power?)null)];

    private Power Billed(DemandCharge charge, Power demand)
    {
        var rounded = BillRounding.Demand(demand * PowerFactorRule.DemandFactor(tariff.PowerFactor, charge, terms.PowerFactor), charge.Rounding);
        return charge.Minimum is { } minimum && rounded < minimum ? minimum : rounded;
    }

    private Power Ratcheted(int charge, int index, Power peak)
    {
        if (tariff.Demand[charge].Ratchet is not { } ratchet)
            return peak;
        var highest = peak;
        foreach (var month in Earlier(index, ratchet.Months))
            if (ratchet.PeakMonths.Count == 0 || ratchet.PeakMonths.Contains(month.Month.Month))
                highest = Higher(highest, (ratchet.AcrossCharges ? Highest(month.Peaks) : month.Peaks[charge] ?? Power.Zero) * ratchet.Share);
        return highest;
    }

    private static Power Highest(IReadOnlyList<Power?> peaks)
    {
        var highest = Power.Zero;
        foreach (var peak in peaks)
            highest = Higher(highest, peak ?? Power.Zero);
        return highest;
    }

    private static Power Higher(Power one, Power other) => one < other ? other : one;

    private IEnumerable<MeteredMonth> Earlier(int index, int count)
    {
        // A steady year follows itself, but no month precedes itself.
        var before = terms.Before ?? months;
        var first = terms.Before is null ? index - months.Count + 1 : -before.Count;
        for (var at = index - 1; at >= index - count && at >= first; at--)
            yield return at >= 0 ? months[at] : before[before.Count + at];
    }
}
