using NodaTime;

namespace RetrofitCalc.Engine.Operation;

/// <summary>One billing month.</summary>
/// <param name="Name">Calendar month it is called after: that of its middle, so counted that each name comes once a year (E-24).</param>
/// <param name="First">First day.</param>
/// <param name="Last">Last day, included.</param>
public sealed record BillingMonth(YearMonth Name, LocalDate First, LocalDate Last)
{
    /// <summary>Days. [count]</summary>
    public int DayCount => Period.DaysBetween(First, Last) + 1;

    /// <summary>Days, in order.</summary>
    public IEnumerable<LocalDate> Days => Enumerable.Range(0, DayCount).Select(First.PlusDays);
}
