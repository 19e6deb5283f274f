using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Lifetimes.Survival;

/// <summary>How many failures to expect in one place where every part that fails gives way to a new one.</summary>
/// <remarks>
/// E-87: M(t) = F(t) + ∫ M(t − x) dF(x), the renewal equation (S-92), over hours in medians of life, so that one function serves
/// every line whose parts have the same shape. It is solved twice on an even grid: with every life lengthened to the next step, which
/// gives a count that is never too high, and with every life shortened to the last step, never too low. Both hold at any time
/// asked for, since the first life, which depends on the age, is cut by a grid that ends at that time.
/// </remarks>
public sealed class RenewalFunction
{
    /// <summary>Steps in a median of life unless a longer reach asks for fewer. [count]</summary>
    public const int DefaultSteps = 1000;

    private const int MostSteps = 8_000;

    private readonly double[] _low;
    private readonly double[] _high;
    private readonly double _step;

    private RenewalFunction(double shape, double[] low, double[] high, double step) =>
        (Shape, _low, _high, _step) = (shape, low, high, step);

    /// <summary>Weibull shape it holds for. [unitless]</summary>
    public double Shape { get; }

    /// <summary>How far it reaches. [medians of life]</summary>
    public double Reach => (_low.Length - 1) * _step;

    /// <summary>The function of a shape. Work grows with the square of reach and steps; keep it for all lines of that shape.</summary>
    /// <param name="shape">Weibull shape. [unitless, 0.5–30]</param>
    /// <param name="reach">How far it must reach. [medians of life, 0–100,000]</param>
    /// <param name="steps">Steps in a median; fewer are taken where the reach would need more than 8,000. [count, 10 or more]</param>
    /// <exception cref="ArgumentOutOfRangeException">A number lies outside its range.</exception>
    public static RenewalFunction Of(double shape, double reach, int steps = DefaultSteps)
    {
        Require.InRange(reach, 0, 1e5);
        var step = Math.Max(1.0 / Require.InRange(steps, 10, int.MaxValue), reach / MostSteps);
        var count = (int)Math.Ceiling(reach / step - 1e-9);
        var life = new WeibullLife(OperatingTime.FromHours(1), shape);
        var failing = new double[count + 2];
        for (var k = 1; k < failing.Length; k++)
            failing[k] = life.Failed(OperatingTime.FromHours(k * step)) - life.Failed(OperatingTime.FromHours((k - 1) * step));
        return new(shape, RenewalSums.Lengthened(failing), RenewalSums.Shortened(failing), step);
    }

    /// <summary>The function that reaches some hours of a life.</summary>
    /// <param name="life">Life of the parts.</param>
    /// <param name="burned">Hours it must reach.</param>
    public static RenewalFunction For(WeibullLife life, OperatingTime burned) => Of(life.Shape, burned / life.Median);

    /// <summary>Failures to expect in one place within some hours.</summary>
    /// <param name="life">Life of the parts.</param>
    /// <param name="ages">Ages at the start.</param>
    /// <param name="burned">Hours from the start.</param>
    /// <exception cref="ArgumentException">The life has another shape.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The hours lie beyond the reach.</exception>
    public ExpectedCount Failures(WeibullLife life, AgeMix ages, OperatingTime burned)
    {
        if (life.Shape != Shape) throw new ArgumentException($"The function is of shape {Shape}, the life of {life.Shape}.", nameof(life));
        var medians = Require.InRange(burned / life.Median, 0, Reach + 1e-9, nameof(burned));
        var whole = Math.Min((int)(medians / _step), _low.Length - 1);
        var rest = Math.Max(0, medians - whole * _step);
        var (low, high, before) = (0.0, 0.0, 0.0);
        for (var k = 0; k <= whole; k++)
        {
            var failed = ages.Failed(life, life.Median * (rest + k * _step));
            low += (failed - before) * (1 + _low[whole - k]);
            high += (failed - before) * (1 + _high[whole - k]);
            before = failed;
        }
        return new ExpectedCount((low + high) / 2, (high - low) / 2);
    }
}
