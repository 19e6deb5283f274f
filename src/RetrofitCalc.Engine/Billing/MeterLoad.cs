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
        var kilowattSeconds = _kilowatts[first] * (_start + (first + 1) * Seconds - from) + _kilowatts[last] * (to - _start - last * Seconds);
        for (var i = first + 1; i < last; i++)
            kilowattSeconds += _kilowatts[i] * Seconds;
        return kilowattSeconds / (to - from);
    }

    /// <summary>Energy between two instants; an interval cut in two is split in proportion. [kWh]</summary>
    /// <param name="from">First instant. [s since 1970]</param>
    /// <param name="to">Instant after the last. [s since 1970]</param>
    public double KilowattHours(long from, long to) => Average(from, to) * (to - from) / 3600.0;
}
