using System.Numerics;
using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Billing;

/// <summary>A meter's readings on the time line of the site. Load counts as even within an interval.</summary>
public sealed class MeterLoad
{
    private readonly double[] _kilowatts;
    private readonly long _start;

    /// <summary>Lays the readings on the time line.</summary>
    /// <param name="meter">Readings without gaps.</param>
    /// <param name="year">The year at the site's clock, within the readings.</param>
    public MeterLoad(MeterYear meter, SiteYear year)
    {
        _start = year.StartOf(meter.FirstDay);
        Seconds = meter.IntervalMinutes * 60L;
        _kilowatts = new double[meter.Watts.Count];
        for (var i = 0; i < _kilowatts.Length; i++)
            _kilowatts[i] = meter.Watts[i]!.Value / 1000;
    }

    /// <summary>Length of an interval. [s]</summary>
    public long Seconds { get; }

    /// <summary>Average load between two instants. [kW]</summary>
    /// <param name="from">First instant. [s since 1970]</param>
    /// <param name="to">Instant after the last. [s since 1970]</param>
    public double Average(long from, long to)
    {
        var first = (from - _start) / Seconds;
        var last = (to - 1 - _start) / Seconds;
        if (first == last)
            return _kilowatts[first];
        var kilowattSeconds = _kilowatts[first] * (_start + (first + 1) * Seconds - from) + _kilowatts[last] * (to - _start - last * Seconds)
            + Sum(_kilowatts.AsSpan((int)first + 1, (int)(last - first - 1))) * Seconds;
        return kilowattSeconds / (to - from);
    }

    /// <summary>Highest average of the windows that follow each other between two instants, the last cut where the time ends. [kW]</summary>
    /// <param name="from">First instant. [s since 1970]</param>
    /// <param name="to">Instant after the last. [s since 1970]</param>
    /// <param name="window">Length of a window. [s]</param>
    public double HighestAverage(long from, long to, long window)
    {
        var highest = double.NegativeInfinity;
        var (first, offset) = Math.DivRem(from - _start, Seconds);
        if (offset == 0 && window % Seconds == 0)
        {
            var (intervals, windows) = ((int)(window / Seconds), (int)((to - from) / window));
            highest = HighestOf(_kilowatts.AsSpan((int)first, windows * intervals), intervals);
            from += windows * window;
        }
        for (; from < to; from += window)
            highest = Math.Max(highest, Average(from, Math.Min(to, from + window)));
        return highest;
    }

    private static double HighestOf(ReadOnlySpan<double> kilowatts, int intervals)
    {
        var highest = double.NegativeInfinity;
        if (intervals == 1)
            foreach (var each in kilowatts)
                highest = each > highest ? each : highest;
        else
            for (; kilowatts.Length > 0; kilowatts = kilowatts[intervals..])
                highest = Math.Max(highest, Sum(kilowatts[..intervals]) / intervals);
        return highest;
    }

    /// <summary>Several sums side by side: a single one would wait for each addition to end.</summary>
    private static double Sum(ReadOnlySpan<double> values)
    {
        var sums = Vector<double>.Zero;
        for (; values.Length >= Vector<double>.Count; values = values[Vector<double>.Count..])
            sums += new Vector<double>(values);
        var sum = Vector.Sum(sums);
        foreach (var value in values)
            sum += value;
        return sum;
    }

    /// <summary>Energy between two instants; an interval cut in two is split in proportion. [kWh]</summary>
    /// <param name="from">First instant. [s since 1970]</param>
    /// <param name="to">Instant after the last. [s since 1970]</param>
    public double KilowattHours(long from, long to) => Average(from, to) * (to - from) / 3600.0;
}
