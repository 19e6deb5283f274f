using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Uncertainty.Distributions;

namespace RetrofitCalc.Engine.Uncertainty.Simulation;

/// <summary>How much surer an option would be if one input were known exactly.</summary>
/// <param name="Input">Key of the input, such as ElectricityPrice.</param>
/// <param name="Name">The input in plain words.</param>
/// <param name="Ask">What would settle it, in plain words.</param>
/// <param name="Explained">Share of the variance of net present value that goes when it is known. [unitless, 0–1]</param>
/// <param name="BandOnceKnown">Width from P10 to P90 of net present value to expect once it is known.</param>
/// <param name="PaybackBandOnceKnown">The same of payback. [years; null where P90 may still be never]</param>
/// <param name="Worth">Money to expect from knowing it before deciding: what is gained by not doing what would lose. Zero where it could not change the decision.</param>
/// <remarks>
/// E-102. Draws are put in order of the input and cut into classes of equal size; within a class the input is as good as known, and
/// what still varies is what the other inputs leave. That needs no further draws, and gives an input credit for what it tells about
/// those that move with it. S-100, S-101.
/// </remarks>
public sealed record ValueOfKnowing(
    string Input, string Name, string Ask, double Explained, Money BandOnceKnown, double? PaybackBandOnceKnown, Money Worth)
{
    private const int DrawsInClass = 200, FewestClasses = 5, MostClasses = 50;

    internal static ValueOfKnowing Of(UncertainInput input, double[] values, DrawnFigures drawn)
    {
        var classes = Classes(values);
        var whole = SampleStatistics.Of(drawn.NetPresentValue);
        SampleStatistics[] worths = [.. classes.Select(members => Within(members, drawn.NetPresentValue))];
        var left = Expected(worths, worth => worth.StandardDeviation * worth.StandardDeviation) / (whole.StandardDeviation * whole.StandardDeviation);
        var payback = Expected([.. classes.Select(members => Within(members, drawn.Payback))], Width);
        var decided = Expected(worths, worth => Math.Max(0, worth.Mean)) - Math.Max(0, whole.Mean);
        return new(input.Key, input.Name, input.Ask,
            whole.StandardDeviation > 0 ? Math.Clamp(1 - left, 0, 1) : 0,
            Money.FromUnits(Expected(worths, Width)),
            double.IsFinite(payback) ? payback : null,
            Money.FromUnits(Math.Max(0, decided)));
    }

    private static double Width(SampleStatistics figure) =>
        double.IsPositiveInfinity(figure.P90) ? double.PositiveInfinity : figure.P90 - figure.P10;

    private static double Expected(SampleStatistics[] classes, Func<SampleStatistics, double> figure) =>
        classes.Sum(each => figure(each) * each.Count) / classes.Sum(each => each.Count);

    private static SampleStatistics Within(int[] members, double[] figure) => SampleStatistics.Of(Array.ConvertAll(members, draw => figure[draw]));

    private static int[][] Classes(double[] values)
    {
        var count = Math.Clamp(values.Length / DrawsInClass, FewestClasses, MostClasses);
        int[] order = [.. Enumerable.Range(0, values.Length).OrderBy(draw => values[draw])];
        return [.. Enumerable.Range(0, count).Select(k => order[Start(k)..Start(k + 1)])];
        int Start(int k) => (int)((long)k * values.Length / count);
    }
}
