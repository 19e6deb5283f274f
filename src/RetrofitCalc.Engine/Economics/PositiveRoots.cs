using MathNet.Numerics.RootFinding;

namespace RetrofitCalc.Engine.Economics;

/// <summary>All positive real roots of a polynomial, each once.</summary>
internal static class PositiveRoots
{
    /// <summary>Roots closer than this share of themselves are one.</summary>
    private const double Same = 1e-9;

    /// <summary>Coefficients below this share of the largest are what rounding left of zero.</summary>
    private const double Noise = 1e-12;

    /// <summary>Roots above zero, ascending.</summary>
    /// <param name="coefficients">Coefficient of x^0 first.</param>
    public static List<double> Of(double[] coefficients)
    {
        var noise = Noise * coefficients.Select(Math.Abs).DefaultIfEmpty(0).Max();
        return WithoutNoise([.. coefficients.Select(c => Math.Abs(c) <= noise ? 0 : c)]);
    }

    private static List<double> WithoutNoise(double[] coefficients)
    {
        var trimmed = Trim(coefficients);
        if (SignChanges(trimmed) == 0) return [];
        var (low, high) = (1 / Limit([.. trimmed.Reverse()]), Limit(trimmed));
        var turns = SignChanges(trimmed) == 1 ? [] : WithoutNoise(Derivative(trimmed));
        List<double> edges = [low, .. turns.Where(x => x > low && x < high), high];
        return RootsBetween(trimmed, edges);
    }

    private static List<double> RootsBetween(double[] polynomial, List<double> edges)
    {
        var roots = new List<double>();
        for (var i = 0; i < edges.Count; i++)
        {
            if (IsZeroAt(polynomial, edges[i])) Add(roots, edges[i]);
            else if (i > 0 && !IsZeroAt(polynomial, edges[i - 1]) && Scaled(polynomial, edges[i - 1]) * Scaled(polynomial, edges[i]) < 0)
                Add(roots, RootWithin(polynomial, edges[i - 1], edges[i]));
        }
        return roots;
    }

    /// <summary>Searched over the logarithm, since rates of a billion and of a thousandth may stand in one bracket.</summary>
    private static double RootWithin(double[] polynomial, double low, double high) =>
        Math.Exp(Brent.FindRoot(log => Scaled(polynomial, Math.Exp(log)), Math.Log(low), Math.Log(high), 1e-15, 1000));

    private static void Add(List<double> roots, double root)
    {
        if (roots.Count == 0 || root - roots[^1] > Same * root) roots.Add(root);
    }

    /// <summary>The polynomial for x up to 1, else divided by x^n: same roots, same sign, no overflow.</summary>
    private static double Scaled(double[] polynomial, double x)
    {
        var sum = 0.0;
        if (x <= 1) for (var i = polynomial.Length - 1; i >= 0; i--) sum = sum * x + polynomial[i];
        else foreach (var coefficient in polynomial) sum = sum / x + coefficient;
        return sum;
    }

    /// <summary>Touching zero without crossing it (a double root) shows only as a value lost in rounding at a turning point.</summary>
    private static bool IsZeroAt(double[] polynomial, double x) =>
        Math.Abs(Scaled(polynomial, x)) <= 1e-13 * Scaled([.. polynomial.Select(Math.Abs)], x);

    private static double[] Derivative(double[] polynomial) => [.. polynomial.Skip(1).Select((c, i) => c * (i + 1))];

    /// <summary>Largest coefficient 1, without the zeros at either end.</summary>
    private static double[] Trim(double[] polynomial)
    {
        var largest = polynomial.Select(Math.Abs).DefaultIfEmpty(0).Max();
        if (largest == 0) return [];
        return [.. polynomial.Select(c => c / largest).SkipWhile(c => c == 0).Reverse().SkipWhile(c => c == 0).Reverse()];
    }

    /// <summary>Cauchy's bound: no root is larger.</summary>
    private static double Limit(double[] polynomial) => 1 + polynomial.SkipLast(1).Max(c => Math.Abs(c / polynomial[^1]));

    private static int SignChanges(double[] polynomial)
    {
        var signs = polynomial.Select(Math.Sign).Where(sign => sign != 0).ToList();
        return signs.Zip(signs.Skip(1)).Count(pair => pair.First != pair.Second);
    }
}
