using NodaTime;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Tests.Samples;

/// <summary>Invented meter years in New York, where a year from one day in March to the same day of the next may be an hour longer or shorter.</summary>
internal static class SampleMeter
{
    /// <summary>The same load at all times.</summary>
    public static MeterYear Even(LocalDate firstDay, double kilowatts, int minutes = 15) =>
        Of(firstDay, minutes, Enumerable.Repeat(kilowatts, Intervals(firstDay, minutes)));

    /// <summary>A calendar year of loads anywhere between two heights, the same on every run.</summary>
    public static MeterYear Uneven(int year, int minutes, double lowKilowatts, double highKilowatts)
    {
        var (first, state) = (new LocalDate(year, 1, 1), 20261u);
        return Of(first, minutes, Enumerable.Range(0, Intervals(first, minutes)).Select(_ =>
        {
            state = unchecked(state * 1664525u + 1013904223u);
            return lowKilowatts + (highKilowatts - lowKilowatts) * (state / (uint.MaxValue + 1.0));
        }));
    }

    /// <summary>The averages of a load given for each minute of 2027.</summary>
    public static MeterYear OfMinutes(double[] kilowatts, int minutes) =>
        Of(new(2027, 1, 1), minutes, kilowatts.Chunk(minutes).Select(interval => interval.Average()));

    public static MeterYear Of(LocalDate firstDay, int minutes, IEnumerable<double> kilowatts) => new()
    {
        Name = "Invented meter", FirstDay = firstDay, IntervalMinutes = minutes, Watts = [.. kilowatts.Select(each => (double?)(each * 1000))],
    };

    /// <summary>The same meter with one reading changed.</summary>
    public static MeterYear With(this MeterYear meter, int interval, double? kilowatts)
    {
        double?[] watts = [.. meter.Watts];
        watts[interval] = kilowatts * 1000;
        return meter with { Watts = watts };
    }

    private static int Intervals(LocalDate firstDay, int minutes)
    {
        var zone = DateTimeZoneProviders.Tzdb["America/New_York"];
        return (int)((zone.AtStartOfDay(firstDay.PlusYears(1)).ToInstant() - zone.AtStartOfDay(firstDay).ToInstant()).TotalMinutes / minutes);
    }
}
