using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Lifetimes.Survival;

/// <summary>Failures counted at a site: some of the parts fitted together have failed by now.</summary>
/// <param name="Failed">Parts that have failed, replaced or not. [count]</param>
/// <param name="Total">Parts fitted together. [count, above 0]</param>
public sealed record FieldFailures(int Failed, int Total)
{
    /// <summary>Hours in a month of light day and night, a twelfth of 8,760 h.</summary>
    public static OperatingTime MonthDayAndNight { get; } = OperatingTime.FromHours(8760.0 / 12);

    /// <summary>Share that has failed. [unitless, 0–1]</summary>
    /// <exception cref="ArgumentOutOfRangeException">There are no parts, or more failed than there are.</exception>
    public double Share => Require.InRange(Failed, 0, Total, nameof(Failed)) / (double)Require.InRange(Total, 1, int.MaxValue, nameof(Total));

    /// <summary>Hours burned in some months.</summary>
    /// <param name="months">Months. [count]</param>
    /// <param name="hoursPerMonth">Hours burned in each.</param>
    public static OperatingTime Burned(double months, OperatingTime hoursPerMonth) => hoursPerMonth * Require.NotNegative(months);

    /// <summary>The life that would have let just this share fail.</summary>
    /// <param name="burned">Hours since they were fitted.</param>
    /// <param name="shape">Weibull shape. [unitless, 0.5–30]</param>
    /// <returns>The life; null when none has failed, when all have, or when nothing has burned: the count then sets no middle.</returns>
    /// <remarks>
    /// E-85 solved for its median: L = t · (ln 2 / −ln(1 − share))^(1/β). Failures must be counted among the parts first fitted; a
    /// second failure in the same place counts as one.
    /// </remarks>
    public WeibullLife? ImpliedLife(OperatingTime burned, double shape)
    {
        if (Share is 0 or 1 || burned <= OperatingTime.Zero) return null;
        return new WeibullLife(burned * Math.Pow(Math.Log(2) / -Math.Log(1 - Share), 1 / shape), shape);
    }
}
