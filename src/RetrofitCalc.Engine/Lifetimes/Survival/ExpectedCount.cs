namespace RetrofitCalc.Engine.Lifetimes.Survival;

/// <summary>A number to expect, and how far it can be off for having been worked out in steps.</summary>
/// <param name="Value">The number; its true error falls with the square of the step, far below <paramref name="Bound"/>. [count]</param>
/// <param name="Bound">It cannot be off by more, either way. [count, 0 or more]</param>
/// <remarks>The bound is of arithmetic alone: what happens is scattered around the expected number (<see cref="SpareParts"/>).</remarks>
public readonly record struct ExpectedCount(double Value, double Bound)
{
    /// <summary>It is not less. [count]</summary>
    public double Low => Math.Max(0, Value - Bound);

    /// <summary>It is not more. [count]</summary>
    public double High => Value + Bound;

    /// <summary>Sum of two.</summary>
    public static ExpectedCount operator +(ExpectedCount left, ExpectedCount right) => new(left.Value + right.Value, left.Bound + right.Bound);

    /// <summary>Difference of two.</summary>
    public static ExpectedCount operator -(ExpectedCount left, ExpectedCount right) => new(left.Value - right.Value, left.Bound + right.Bound);

    /// <summary>As many times.</summary>
    public static ExpectedCount operator *(ExpectedCount count, double factor) => new(count.Value * factor, count.Bound * factor);
}
