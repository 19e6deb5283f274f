using NodaTime;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Lifetimes;

/// <summary>Parts falling due within the study period, by the plain interval "hours over hours a year".</summary>
/// <remarks>
/// All parts of one kind on a line fall due together, by group relamping or as the middle of single failures. What would fall
/// due on the last day of the period is left out. Lines kept as they are pay the default recycling rates of
/// <see cref="OptionCosts"/> under every option, so that they cancel out of its savings. Recycling of old luminaires is not counted.
/// </remarks>
public static class ReplacementCalendar
{
    private const double DaysPerYear = 365.25;

    private static readonly OptionCosts KeptCosts = new();

    /// <summary>The replacements of one line, by date.</summary>
    /// <param name="fitted">The line and what is fitted.</param>
    /// <param name="clocks">Its clocks.</param>
    /// <param name="assumptions">Policies and rates.</param>
    /// <param name="costs">Rates of the option; null for the lighting kept as it is.</param>
    public static IReadOnlyList<ReplacementEvent> Of(
        FittedLine fitted, IReadOnlyList<WearClock> clocks, Assumptions assumptions, OptionCosts? costs)
    {
        var events = new List<ReplacementEvent>();
        foreach (var clock in clocks)
        {
            if (clock is not { Interval: > 0, FirstDue: { } first } || !FallsWithin(first, assumptions)) continue;
            var (count, cost, priceMissing) = ReplacementCost.Of(fitted, clock.Part, assumptions, Rates(fitted, costs));
            for (var years = first; FallsWithin(years, assumptions); years += clock.Interval.Value)
                events.Add(new ReplacementEvent(fitted.Line.Id, clock.Part, Day(assumptions, years), years, count, cost) { PriceMissing = priceMissing });
        }
        if (clocks.Count > 1) events.Sort((one, other) => one.YearsFromStart.CompareTo(other.YearsFromStart));
        return events;
    }

    /// <summary>Adds what one line's replacements cost to the years they fall in.</summary>
    /// <param name="fitted">The line and what is fitted.</param>
    /// <param name="clocks">Its clocks.</param>
    /// <param name="assumptions">Policies and rates.</param>
    /// <param name="costs">Rates of the option; null for the lighting kept as it is.</param>
    /// <param name="years">Sums by year, year 1 first, at prices of the start.</param>
    internal static void AddTo(
        Money[] years, FittedLine fitted, IReadOnlyList<WearClock> clocks, Assumptions assumptions, OptionCosts? costs)
    {
        foreach (var clock in clocks)
        {
            if (clock is not { Interval: > 0, FirstDue: { } first } || !FallsWithin(first, assumptions)) continue;
            var cost = ReplacementCost.Of(fitted, clock.Part, assumptions, Rates(fitted, costs)).Cost;
            for (var due = first; FallsWithin(due, assumptions); due += clock.Interval.Value) years[YearOf(due) - 1] += cost;
        }
    }

    /// <summary>Year of the study in which something falls due: 1 for the first.</summary>
    /// <param name="yearsFromStart">Years from the start. [years, 0 or more]</param>
    public static int YearOf(double yearsFromStart) => Math.Max(1, (int)Math.Ceiling(yearsFromStart - 1e-9));

    private static OptionCosts Rates(FittedLine fitted, OptionCosts? costs) =>
        fitted.Fitting is BallastedFitting { Renewed: false } ? KeptCosts : costs ?? KeptCosts;

    private static bool FallsWithin(double years, Assumptions assumptions) => years < assumptions.StudyYears - 1e-9;

    private static LocalDate Day(Assumptions assumptions, double years) => assumptions.Start.PlusDays((int)Math.Round(years * DaysPerYear));
}
