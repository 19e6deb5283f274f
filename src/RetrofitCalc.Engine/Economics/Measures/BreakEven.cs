using MathNet.Numerics.RootFinding;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Economics.Measures;

/// <summary>A value of an input at which an option neither pays nor costs.</summary>
/// <param name="At">The value. [unit of the input]</param>
/// <param name="PaysAbove">True when the option pays above it, false when it pays below.</param>
/// <param name="Jumps">True when the worth jumps past zero there, as where one more replacement falls into the study.</param>
public sealed record BreakEvenPoint(double At, bool PaysAbove, bool Jumps);

/// <summary>Break-even by bracketed root finding (E-97).</summary>
public static class BreakEven
{
    /// <summary>What is left of worth at a root beside the ends of its bracket: less is the cents that bills round to, more a jump.</summary>
    private const double Cents = 0.01;

    /// <summary>Every point in a span at which worth changes between paying (zero or more) and not.</summary>
    /// <param name="worth">Worth of the option, such as net present value, as a function of the input.</param>
    /// <param name="low">Start of the span; above zero.</param>
    /// <param name="high">End of the span; above <paramref name="low"/>.</param>
    /// <param name="steps">Parts of the span, each of the same ratio; of two changes within one part none is seen. [count, 1 or more]</param>
    /// <returns>The points, lowest first; empty when it pays, or does not, over the whole span.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The span or the steps are out of order.</exception>
    public static IReadOnlyList<BreakEvenPoint> All(Func<double, double> worth, double low, double high, int steps = 12)
    {
        Require.InRange(low, double.Epsilon, double.MaxValue);
        Require.InRange(high, Math.BitIncrement(low), double.MaxValue);
        Require.InRange(steps, 1, int.MaxValue);
        var points = new List<BreakEvenPoint>();
        var (left, leftWorth) = (low, worth(low));
        for (var i = 1; i <= steps; i++)
        {
            var right = i == steps ? high : low * Math.Pow(high / low, (double)i / steps);
            var rightWorth = worth(right);
            if (leftWorth >= 0 != rightWorth >= 0) points.Add(Between(worth, (left, leftWorth), (right, rightWorth)));
            (left, leftWorth) = (right, rightWorth);
        }
        return points;
    }

    private static BreakEvenPoint Between(Func<double, double> worth, (double At, double Worth) left, (double At, double Worth) right)
    {
        var at = Brent.FindRoot(worth, left.At, right.At, 1e-10 * right.At, 200);
        var jumps = Math.Abs(worth(at)) > Cents * Math.Max(Math.Abs(left.Worth), Math.Abs(right.Worth));
        return new(at, right.Worth >= 0, jumps);
    }
}
