using NodaTime;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Billing;

/// <summary>A price as a reader of a bill knows it: one name and its blocks, whatever number of charges it takes to say when it holds.</summary>
/// <param name="Price">Name and blocks; its hours say nothing.</param>
/// <param name="Charges">Places of its charges among the tariff's energy charges, in order. [0-based]</param>
public sealed record EnergyPeriod(EnergyCharge Price, IReadOnlyList<int> Charges)
{
    /// <summary>Periods of a list of charges, in order of their first charge. Charges that differ in nothing but their hours are one period, unless each counts blocks of its own in the same month.</summary>
    /// <param name="charges">Energy charges of a tariff.</param>
    public static IReadOnlyList<EnergyPeriod> Of(IReadOnlyList<EnergyCharge> charges)
    {
        var periods = new List<(EnergyCharge Price, List<int> Charges)>();
        foreach (var (index, charge) in charges.Index())
        {
            var known = periods.FindIndex(period =>
                IsSamePrice(period.Price, charge) && (charge.Blocks.Count == 1 || !period.Charges.Any(other => InOneMonth(charges[other].When, charge.When))));
            if (known >= 0)
                periods[known].Charges.Add(index);
            else
                periods.Add((charge with { When = new() }, [index]));
        }
        return [.. periods.Select(period => new EnergyPeriod(period.Price, period.Charges))];
    }

    private static bool IsSamePrice(EnergyCharge one, EnergyCharge other) =>
        one.Name == other.Name && one.BlockUnit == other.BlockUnit && one.BlocksByDemand == other.BlocksByDemand && one.Blocks.SequenceEqual(other.Blocks);

    private static bool InOneMonth(TariffHours one, TariffHours other) =>
        Enumerable.Range(1, 12).Any(month => TouchesMonth(one, month) && TouchesMonth(other, month));

    private static bool TouchesMonth(TariffHours when, int month) =>
        new YearMonth(2028, month).ToDateInterval().Any(day => TariffDay.InForce(when, day));
}
