using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Engine.Billing;

/// <summary>Compares years of bills line by line.</summary>
public static class BillSavings
{
    /// <summary>What is saved when the present bills become those after a change.</summary>
    /// <param name="now">Bills of the present year.</param>
    /// <param name="firstYear">Bills of the first year after the change.</param>
    /// <param name="after">Bills of a steady year after the change.</param>
    /// <param name="nowEnergy">Energy on the meter now.</param>
    /// <param name="savedEnergy">Energy saved on the meter.</param>
    public static BillSaving Of(
        IReadOnlyList<MonthlyBill> now, IReadOnlyList<MonthlyBill> firstYear, IReadOnlyList<MonthlyBill> after, Energy nowEnergy, Energy savedEnergy)
    {
        List<ChargeSaving> charges = [.. now.Concat(firstYear).Concat(after).SelectMany(bill => bill.Lines)
            .GroupBy(line => (line.Kind, line.Charge)).OrderBy(group => group.Key)
            .Select(group => new ChargeSaving(group.Key.Kind, group.Key.Charge, NameOf(group.First()),
                Sum(now, group.Key), Sum(firstYear, group.Key), Sum(after, group.Key)))];
        var blended = nowEnergy > Energy.Zero ? EnergyPrice.FromPerKilowattHour(Sum(charges, charge => charge.Now).Units / nowEnergy.KilowattHours) : (EnergyPrice?)null;
        return new()
        {
            Charges = charges,
            FirstYear = firstYear,
            Total = Sum(charges, charge => charge.Saving),
            FirstYearTotal = Sum(charges, charge => charge.Now - charge.FirstYear),
            Demand = Sum(charges.Where(IsDemand), charge => charge.Saving),
            FirstYearDemand = Sum(charges.Where(IsDemand), charge => charge.Now - charge.FirstYear),
            Energy = savedEnergy,
            BlendedPrice = blended,
            BlendedTotal = blended is { } price ? savedEnergy * price : null,
        };
    }

    /// <summary>Whether a charge is one of demand: by the kilowatt or the kilovar.</summary>
    /// <param name="charge">The charge.</param>
    public static bool IsDemand(ChargeSaving charge) => charge.Kind is BillLineKind.Demand or BillLineKind.Reactive;

    /// <summary>Blocks of one charge carry its name and ", block n".</summary>
    private static string NameOf(BillLine line) =>
        line.Kind is BillLineKind.Energy or BillLineKind.Demand && line.Name.LastIndexOf(", block ", StringComparison.Ordinal) is > 0 and var end ? line.Name[..end] : line.Name;

    private static Money Sum(IReadOnlyList<MonthlyBill> bills, (BillLineKind Kind, int Charge) key) =>
        bills.SelectMany(bill => bill.Lines).Where(line => (line.Kind, line.Charge) == key).Aggregate(Money.Zero, (sum, line) => sum + line.Amount);

    private static Money Sum(IEnumerable<ChargeSaving> charges, Func<ChargeSaving, Money> value) =>
        charges.Aggregate(Money.Zero, (sum, charge) => sum + value(charge));
}
