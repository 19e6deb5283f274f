namespace RetrofitCalc.Engine.Lifetimes.Survival;

/// <summary>Renewals on an even grid, lives rounded to it.</summary>
internal static class RenewalSums
{
    /// <summary>Renewals by each step, lives rounded up: a life ends k steps on with chance <paramref name="failing"/>[k], k from 1.</summary>
    public static double[] Lengthened(double[] failing)
    {
        var sums = new double[failing.Length - 1];
        for (var k = 1; k < sums.Length; k++) sums[k] = Next(failing, sums, k, 1);
        return sums;
    }

    /// <summary>Renewals by each step, lives rounded down: a life ends k − 1 steps on, at once where that is none.</summary>
    public static double[] Shortened(double[] failing)
    {
        var sums = new double[failing.Length - 1];
        for (var k = 0; k < sums.Length; k++) sums[k] = (failing[1] + Next(failing, sums, k, 2)) / (1 - failing[1]);
        return sums;
    }

    /// <summary>Σ p_i · (1 + m_back): the first life ends, and from there on the process begins anew.</summary>
    private static double Next(double[] failing, double[] sums, int k, int first)
    {
        var sum = 0.0;
        for (var (i, back) = (first, k - 1); back >= 0; i++, back--) sum += failing[i] * (1 + sums[back]);
        return sum;
    }
}
