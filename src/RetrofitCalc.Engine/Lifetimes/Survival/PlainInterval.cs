namespace RetrofitCalc.Engine.Lifetimes.Survival;

/// <summary>The plain interval beside the forecast: all parts due together after their hours, nothing failing before or after.</summary>
public static class PlainInterval
{
    /// <summary>Parts due in each year, year 1 first. [count]</summary>
    /// <param name="parts">The parts; their mean age counts.</param>
    /// <param name="policy">When they are replaced.</param>
    /// <param name="years">Years of the study. [count]</param>
    /// <remarks>Follows <see cref="ReplacementCalendar"/>: what falls due on the last day is left out, what is overdue falls in year 1.</remarks>
    public static IReadOnlyList<double> ByYear(PartGroup parts, ReplacementPolicy policy, int years)
    {
        if (policy is GroupReplacement) return GroupsByYear(parts, policy, years);
        var age = parts.Ages.Shares.Sum(each => each.Share * each.Burned.Hours);
        return Due(Math.Max(0, parts.Life.Median.Hours - age), parts.Life.Median.Hours, parts, years);
    }

    /// <summary>Parts changed together in each year, year 1 first; none under spot replacement. [count]</summary>
    internal static double[] GroupsByYear(PartGroup parts, ReplacementPolicy policy, int years) =>
        policy is GroupReplacement group ? Due(group.First.Hours, group.Interval.Hours, parts, years) : new double[years];

    private static double[] Due(double firstHours, double intervalHours, PartGroup parts, int years)
    {
        var counts = new double[years];
        if (parts.HoursPerYear.Hours <= 0) return counts;
        for (var due = firstHours / parts.HoursPerYear.Hours; due < years - 1e-9; due += intervalHours / parts.HoursPerYear.Hours)
            counts[ReplacementCalendar.YearOf(due) - 1] += parts.Count;
        return counts;
    }
}
