using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Uncertainty;

namespace RetrofitCalc.Engine.Cases;

/// <summary>Lays the present lighting beside the meter, interval by interval.</summary>
internal static class MeterComparisons
{
    /// <summary>Below this an excess is rounding. [kW]</summary>
    private const double Tolerance = 1e-6;

    /// <summary>The comparison; null without meter data.</summary>
    /// <param name="context">The study's context.</param>
    public static MeterComparison? Of(StudyContext context)
    {
        if (context.Study.Meter is not { } meter)
            return null;
        var lighting = context.PresentUnder(Perturbation.None).Lighting;
        var metered = Energy.FromKilowattHours(context.Load.MeteredCells!.Sum());
        var (exceeded, largest) = Excess(context, lighting.StateKilowatts);
        var (first, count) = IntervalsOf(context);
        return new()
        {
            Metered = metered,
            LightingShare = metered > Energy.Zero ? lighting.Lighting / metered : 0,
            Intervals = count,
            IntervalsExceeded = exceeded,
            LargestExcess = Power.FromKilowatts(largest),
            Filled = meter.Filled.Sum(gap => Math.Max(0, Math.Min(gap.First + gap.Count, first + count) - Math.Max(gap.First, first))),
        };
    }

    private static (int First, int Count) IntervalsOf(StudyContext context)
    {
        var (year, seconds) = (context.Year, context.Load.Meter!.Seconds);
        return ((int)((year.Start - year.StartOf(context.Study.Meter!.FirstDay)) / seconds), (int)((year.End - year.Start) / seconds));
    }

    private static (int Exceeded, double LargestKilowatts) Excess(StudyContext context, double[] stateKilowatts)
    {
        var (meter, year) = (context.Load.Meter!, context.Year);
        var (exceeded, largest) = (0, 0.0);
        foreach (var (i, lighting) in IntervalLoads.Of(context, stateKilowatts, meter.Seconds).Index())
        {
            var from = year.Start + i * meter.Seconds;
            var metered = meter.Average(from, Math.Min(from + meter.Seconds, year.End));
            var excess = lighting - metered;
            // A site that sends energy out makes some of what its lights draw: its meter says nothing about the survey then.
            if (metered < 0 || excess <= Tolerance)
                continue;
            exceeded++;
            largest = Math.Max(largest, excess);
        }
        return (exceeded, largest);
    }
}
