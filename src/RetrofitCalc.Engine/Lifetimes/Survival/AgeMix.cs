using NodaTime;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Lifetimes.Survival;

/// <summary>Parts of one age.</summary>
/// <param name="Share">Share of all parts. [unitless, 0–1]</param>
/// <param name="Burned">Hours each has burned and still works.</param>
public sealed record AgedShare(double Share, OperatingTime Burned);

/// <summary>Parts fitted on one day.</summary>
/// <param name="Fitted">The day.</param>
/// <param name="Count">Parts of that day that still work. [count]</param>
public sealed record InstalledBatch(LocalDate Fitted, int Count);

/// <summary>Ages of the parts that work at the start. They need not all have been fitted on one day.</summary>
/// <remarks>E-86. Ages are those of parts that work: what has failed already has been replaced.</remarks>
public sealed class AgeMix
{
    private const double DaysPerYear = 365.25;

    private AgeMix(IReadOnlyList<AgedShare> shares) => Shares = shares;

    /// <summary>All new.</summary>
    public static AgeMix New { get; } = new([new AgedShare(1, OperatingTime.Zero)]);

    /// <summary>Shares by age; they add up to one.</summary>
    public IReadOnlyList<AgedShare> Shares { get; }

    /// <summary>All of one age.</summary>
    /// <param name="burned">Hours burned.</param>
    public static AgeMix All(OperatingTime burned) => new([new AgedShare(1, burned)]);

    /// <summary>Parts of several ages.</summary>
    /// <param name="counts">Parts and the hours they have burned; counts need not add up to one.</param>
    /// <exception cref="ArgumentException">A count is negative, or there are no parts.</exception>
    public static AgeMix Of(IReadOnlyList<(double Count, OperatingTime Burned)> counts)
    {
        var sum = counts.Sum(each => Require.NotNegative(each.Count));
        if (sum <= 0) throw new ArgumentException("There are no parts.", nameof(counts));
        return new([.. counts.Where(each => each.Count > 0).Select(each => new AgedShare(each.Count / sum, each.Burned))]);
    }

    /// <summary>Parts fitted on several days.</summary>
    /// <param name="batches">Days and parts; days after the start count as new.</param>
    /// <param name="start">Start of the study.</param>
    /// <param name="hoursPerYear">Hours burned in a year, then as now.</param>
    /// <exception cref="ArgumentException">There are no parts.</exception>
    public static AgeMix Installed(IReadOnlyList<InstalledBatch> batches, LocalDate start, OperatingTime hoursPerYear) =>
        Of([.. batches.Select(batch => ((double)Require.Count(batch.Count), hoursPerYear * YearsSince(batch.Fitted, start)))]);

    /// <summary>Fitted evenly over a span of time.</summary>
    /// <param name="youngest">Hours burned by the latest.</param>
    /// <param name="oldest">Hours burned by the earliest; not below <paramref name="youngest"/>.</param>
    /// <param name="steps">Ages told apart, each the middle of its part of the span. [count, 1 or more]</param>
    /// <exception cref="ArgumentOutOfRangeException">The span runs backwards, or has no steps.</exception>
    public static AgeMix Spread(OperatingTime youngest, OperatingTime oldest, int steps = 20)
    {
        Require.InRange(oldest.Hours, youngest.Hours, double.MaxValue, nameof(oldest));
        Require.InRange(steps, 1, int.MaxValue);
        var width = (oldest.Hours - youngest.Hours) / steps;
        return Of([.. Enumerable.Range(0, steps).Select(i => (1.0, OperatingTime.FromHours(youngest.Hours + (i + 0.5) * width)))]);
    }

    /// <summary>Ages that settle after many years of replacing each part as it fails: a part of age t is there in proportion to S(t).</summary>
    /// <param name="life">Life of the parts.</param>
    /// <param name="steps">Ages told apart. [count, 1 or more]</param>
    /// <remarks>The failures to come are then even: hours over mean life. S-92.</remarks>
    public static AgeMix Settled(WeibullLife life, int steps = 200)
    {
        var width = life.Until(1e-12) / Require.InRange(steps, 1, int.MaxValue);
        return Of([.. Enumerable.Range(0, steps).Select(i => width * (i + 0.5)).Select(age => (life.Surviving(age), age))]);
    }

    /// <summary>Share of the parts working at the start that has failed, each at its age. [unitless, 0–1]</summary>
    /// <param name="life">Life of the parts.</param>
    /// <param name="more">Hours since the start.</param>
    public double Failed(WeibullLife life, OperatingTime more)
    {
        var failed = 0.0;
        foreach (var (share, burned) in Shares) failed += share * (1 - life.SurvivingFurther(burned, more));
        return failed;
    }

    private static double YearsSince(LocalDate day, LocalDate start) => Math.Max(0, Period.DaysBetween(day, start)) / DaysPerYear;
}
