using System.Runtime.CompilerServices;

namespace RetrofitCalc.Engine.Quantities;

/// <summary>Checks at the engine's public entries. Each message carries the value and the range.</summary>
public static class Require
{
    /// <summary>Returns <paramref name="value"/> if it is a finite number.</summary>
    /// <param name="value">The number to check. [any unit]</param>
    /// <param name="name">Name of the argument, filled in by the compiler.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is not a number or infinite.</exception>
    public static double Finite(double value, [CallerArgumentExpression(nameof(value))] string name = "") =>
        double.IsFinite(value) ? value : throw new ArgumentOutOfRangeException(name, value, "Must be a finite number.");

    /// <summary>Returns <paramref name="value"/> if it is finite and not negative.</summary>
    /// <param name="value">The number to check. [any unit]</param>
    /// <param name="name">Name of the argument, filled in by the compiler.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative, not a number or infinite.</exception>
    public static double NotNegative(double value, [CallerArgumentExpression(nameof(value))] string name = "") =>
        double.IsFinite(value) && value >= 0 ? value : throw new ArgumentOutOfRangeException(name, value, "Must be zero or more.");

    /// <summary>Returns <paramref name="value"/> if it lies between the limits, both included.</summary>
    /// <param name="value">The number to check. [any unit]</param>
    /// <param name="low">Lowest value allowed. [unit of value]</param>
    /// <param name="high">Highest value allowed. [unit of value]</param>
    /// <param name="name">Name of the argument, filled in by the compiler.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value lies outside, or is not a number.</exception>
    public static double InRange(double value, double low, double high, [CallerArgumentExpression(nameof(value))] string name = "") =>
        value >= low && value <= high ? value : throw new ArgumentOutOfRangeException(name, value, $"Must be {low} to {high}.");

    /// <summary>Returns <paramref name="count"/> if it is zero or more.</summary>
    /// <param name="count">A number of things. [count]</param>
    /// <param name="name">Name of the argument, filled in by the compiler.</param>
    /// <exception cref="ArgumentOutOfRangeException">The count is negative.</exception>
    public static int Count(int count, [CallerArgumentExpression(nameof(count))] string name = "") =>
        count >= 0 ? count : throw new ArgumentOutOfRangeException(name, count, "Must be zero or more.");
}
