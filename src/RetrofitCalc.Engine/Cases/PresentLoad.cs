using NodaTime;
using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Uncertainty;

namespace RetrofitCalc.Engine.Cases;

/// <summary>What the surveyed lighting and its plant draw, interval by interval.</summary>
public static class PresentLoad
{
    /// <summary>Average of the present lighting and its plant in each interval of twelve months. [W]</summary>
    /// <param name="study">A study without problems; its own meter does not matter.</param>
    /// <param name="firstDay">First local day, on the 1st to 28th of a month.</param>
    /// <param name="intervalMinutes">Length of an interval. [min; 5, 15, 30 or 60]</param>
    public static IReadOnlyList<double> Watts(Study study, LocalDate firstDay, int intervalMinutes)
    {
        var reading = new MeterReading { Dates = [.. Enumerable.Range(0, BillingYear.Months + 1).Select(firstDay.PlusMonths)] };
        var context = new StudyContext(study with { Meter = null, Tariff = study.Tariff with { Reading = reading } });
        return [.. Averages(context, intervalMinutes * 60).Select(interval => interval.Kilowatts * 1000)];
    }

    /// <summary>Averages over the intervals of the study's year. [s since 1970, kW]</summary>
    internal static IEnumerable<(long From, long To, double Kilowatts)> Averages(StudyContext context, int seconds)
    {
        var (site, states, segment) = (context.Load.Timeline, context.PresentUnder(Perturbation.None).Lighting.StateKilowatts, 0);
        for (var from = context.Year.Start; from < context.Year.End; from += seconds)
        {
            var (to, average) = (Math.Min(from + seconds, context.Year.End), 0.0);
            while (site.EndOf(segment) <= from)
                segment++;
            for (var at = segment; at < site.Count && site.StartOf(at) < to; at++)
                average += states[site.StateOf(at)] * (Math.Min(to, site.EndOf(at)) - Math.Max(from, site.StartOf(at))) / (to - from);
            yield return (from, to, average);
        }
    }
}
