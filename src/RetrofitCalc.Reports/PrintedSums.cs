using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Reports;

/// <summary>Totals as printed, on pages and on paper: the sum of the printed lines, so that a reader who adds them up finds the same.</summary>
public static class PrintedSums
{
    /// <summary>Cost of a year: the seasons in whole units.</summary>
    public static Money Cost(LightingCase lighting) => Money.FromUnits(lighting.Seasons.Sum(season => Whole(season.Cost.Units)));

    /// <summary>First cost after the incentive: its parts in whole units.</summary>
    public static Money Of(FirstCost cost)
    {
        Money[] added = [cost.Parts, cost.Labour, cost.Disposal, cost.FixedSum, cost.Contingency];
        return Money.FromUnits(added.Sum(part => Whole(part.Units)) - Whole(cost.Incentive.Units));
    }

    internal static double Whole(double value) => Math.Round(value, MidpointRounding.AwayFromZero);
}
