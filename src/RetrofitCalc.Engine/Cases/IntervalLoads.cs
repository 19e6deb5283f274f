using RetrofitCalc.Engine.Operation;

namespace RetrofitCalc.Engine.Cases;

/// <summary>The present lighting and its plant, averaged over the intervals of a meter.</summary>
internal static class IntervalLoads
{
    /// <summary>Average in each interval of the billing months, from their first instant on. [kW]</summary>
    /// <param name="context">The study's context.</param>
    /// <param name="stateKilowatts">Lighting and plant in each state of the site. [kW]</param>
    /// <param name="seconds">Length of an interval. [s]</param>
    public static double[] Of(StudyContext context, double[] stateKilowatts, long seconds)
    {
        var (site, year) = (context.Load.Timeline, context.Year);
        var averages = new double[(year.End - year.Start + seconds - 1) / seconds];
        var segment = 0;
        for (var i = 0; i < averages.Length; i++)
        {
            var from = year.Start + i * seconds;
            var to = Math.Min(from + seconds, year.End);
            while (site.EndOf(segment) <= from)
                segment++;
            for (var at = segment; at < site.Count && site.StartOf(at) < to; at++)
                averages[i] += stateKilowatts[site.StateOf(at)] * (Math.Min(to, site.EndOf(at)) - Math.Max(from, site.StartOf(at))) / (to - from);
        }
        return averages;
    }
}
