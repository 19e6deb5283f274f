using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Reports;

namespace RetrofitCalc.Web.Features.Results;

/// <summary>One part of the first cost.</summary>
public sealed record CostRow(string Name, string Amount)
{
    /// <summary>The parts there are; their rounded sum may differ from the total by a unit, as the total is rounded once.</summary>
    public static IReadOnlyList<CostRow> Of(FirstCost cost, QuantityText text)
    {
        (string, Money)[] parts =
        [
            ("Tubes, luminaires, lamps, ballasts", cost.Parts), ("Electrician", cost.Labour), ("Recycling of lamps and ballasts", cost.Disposal),
            ("Permits, engineering and other sums", cost.FixedSum), ("Contingency", cost.Contingency), ("Incentive", -cost.Incentive),
        ];
        return [.. parts.Where(p => p.Item2 != Money.Zero).Select(p => new CostRow(p.Item1, text.Money(p.Item2)))];
    }
}
