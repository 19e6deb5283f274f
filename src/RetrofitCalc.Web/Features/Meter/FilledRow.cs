using NodaTime;
using RetrofitCalc.Engine.Metering;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Web.Features.Meter;

/// <summary>A run of filled intervals with its local times.</summary>
public sealed record FilledRow(LocalDateTime From, int Count, string Rule)
{
    public static IReadOnlyList<FilledRow> Of(MeterYear meter, DateTimeZone zone)
    {
        if (meter.Filled.Count == 0) return [];
        var times = MeterTimes.Of(meter, zone).Select(time => time.LocalDateTime).ToList();
        return [.. meter.Filled.Select(gap => new FilledRow(times[gap.First], gap.Count, gap.Rule))];
    }
}
