using MathNet.Numerics;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Lifetimes.Survival;

/// <summary>How long parts of one kind live: a Weibull distribution whose median is the rated life.</summary>
/// <remarks>
/// E-85: S(t) = exp(−ln 2 · (t/L)^β). Hours are hours burned, not hours of the clock on the wall. S-90. A part that has burned
/// <c>a</c> hours and still works has S(a + t)/S(a) as its chance of t hours more.
/// </remarks>
public sealed record WeibullLife
{
    /// <summary>Lowest shape that is accepted. [unitless]</summary>
    public const double LowestShape = 0.5;

    /// <summary>Highest shape that is accepted: nearly all parts then fail at the rated life. [unitless]</summary>
    public const double HighestShape = 30;

    private static readonly double LogTwo = Math.Log(2);

    /// <summary>A life from its median and its shape.</summary>
    /// <param name="median">Hours after which half the parts have failed; above zero.</param>
    /// <param name="shape">Shape β: 1 fails by chance at any age, the higher the more they fail together. [unitless, 0.5–30]</param>
    /// <exception cref="ArgumentOutOfRangeException">The median is zero, or the shape lies outside its range.</exception>
    public WeibullLife(OperatingTime median, double shape)
    {
        Median = median > OperatingTime.Zero ? median : throw new ArgumentOutOfRangeException(nameof(median), median.Hours, "Must be above zero.");
        Shape = Require.InRange(shape, LowestShape, HighestShape);
    }

    /// <summary>Hours after which half the parts have failed: the rated life.</summary>
    public OperatingTime Median { get; }

    /// <summary>Shape β. [unitless, 0.5–30]</summary>
    public double Shape { get; }

    /// <summary>Mean life: L · Γ(1 + 1/β) / (ln 2)^(1/β).</summary>
    public OperatingTime Mean => Median * MeanOfMedian(Shape);

    /// <summary>Share that still works. [unitless, 0–1]</summary>
    /// <param name="burned">Hours since new.</param>
    public double Surviving(OperatingTime burned) => Math.Exp(-Wear(burned / Median));

    /// <summary>Share that has failed. [unitless, 0–1]</summary>
    /// <param name="burned">Hours since new.</param>
    public double Failed(OperatingTime burned) => 1 - Surviving(burned);

    /// <summary>Share of the parts working now that works for some hours more. [unitless, 0–1]</summary>
    /// <param name="burned">Hours they have burned already.</param>
    /// <param name="more">Hours to come.</param>
    public double SurvivingFurther(OperatingTime burned, OperatingTime more) =>
        Math.Exp(Wear(burned / Median) - Wear((burned + more) / Median));

    /// <summary>Failures an hour among the parts that still work. [1/h]</summary>
    /// <param name="burned">Hours since new; above zero where the shape is below 1.</param>
    public double FailureRate(OperatingTime burned) => LogTwo * Shape * Math.Pow(burned / Median, Shape - 1) / Median.Hours;

    /// <summary>Hours to come until only a share of the parts working now is left.</summary>
    /// <param name="share">Share that still works then. [unitless, above 0 to 1]</param>
    /// <param name="burned">Hours they have burned already.</param>
    public OperatingTime Until(double share, OperatingTime burned = default)
    {
        Require.InRange(share, double.Epsilon, 1);
        var end = Math.Pow(Math.Pow(burned / Median, Shape) - Math.Log2(share), 1 / Shape);
        return OperatingTime.FromHours(Math.Max(0, Median.Hours * end - burned.Hours));
    }

    /// <summary>Mean life over median life. [unitless]</summary>
    internal static double MeanOfMedian(double shape) => SpecialFunctions.Gamma(1 + 1 / shape) / Math.Pow(LogTwo, 1 / shape);

    private double Wear(double medians) => LogTwo * Math.Pow(medians, Shape);
}
