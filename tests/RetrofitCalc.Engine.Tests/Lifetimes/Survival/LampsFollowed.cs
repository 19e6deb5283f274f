using RetrofitCalc.Engine.Lifetimes.Survival;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Tests.Lifetimes.Survival;

/// <summary>Lamps followed one by one, and ages followed step by step: two slow ways to the numbers of the renewal equation.</summary>
internal static class LampsFollowed
{
    private const int Places = 100_000;

    /// <summary>Mean failures in a place, and the standard error of that mean.</summary>
    public static (double Mean, double Error) Failures(WeibullLife life, OperatingTime age, OperatingTime hours, Random random)
    {
        var (sum, squares) = (0.0, 0.0);
        for (var place = 0; place < Places; place++)
        {
            var count = CountInPlace(life, age, hours, random);
            sum += count;
            squares += count * count;
        }
        var mean = sum / Places;
        return (mean, Math.Sqrt((squares / Places - mean * mean) / (Places - 1)));
    }

    /// <summary>Failures in one place; the first part has burned some hours already.</summary>
    public static double CountInPlace(WeibullLife life, OperatingTime age, OperatingTime hours, Random random)
    {
        var count = 0.0;
        for (var time = life.Until(1 - random.NextDouble(), age).Hours; time <= hours.Hours; time += life.Until(1 - random.NextDouble()).Hours) count++;
        return count;
    }

    /// <summary>Failures of one place by step, all ages carried along; at the steps named every part is made new.</summary>
    public static double[] ByStep(WeibullLife life, OperatingTime age, OperatingTime step, (int Steps, int First, int Interval) plan)
    {
        var ages = new double[plan.Steps + (int)Math.Round(age / step) + 2];
        ages[(int)Math.Round(age / step)] = 1;
        var failures = new double[plan.Steps];
        for (var k = 0; k < plan.Steps; k++)
        {
            if (k >= plan.First && (k - plan.First) % plan.Interval == 0) MakeNew(ages);
            failures[k] = Move(ages, life, step);
        }
        return failures;
    }

    private static void MakeNew(double[] ages)
    {
        Array.Clear(ages);
        ages[0] = 1;
    }

    /// <summary>One step on: what fails is half a step old on average at its end, half of it none and half of it one step.</summary>
    private static double Move(double[] ages, WeibullLife life, OperatingTime step)
    {
        var failed = 0.0;
        for (var i = ages.Length - 2; i >= 0; i--)
        {
            var left = ages[i] == 0 ? 0 : ages[i] * life.SurvivingFurther(step * i, step);
            failed += ages[i] - left;
            ages[i + 1] = left;
        }
        ages[0] = failed / 2;
        ages[1] += failed / 2;
        return failed;
    }
}
