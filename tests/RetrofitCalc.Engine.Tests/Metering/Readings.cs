using NodaTime;
using RetrofitCalc.Engine.Metering;

namespace RetrofitCalc.Engine.Tests.Metering;

/// <summary>Invented readings with round figures.</summary>
internal static class Readings
{
    public const int Quarter = 900;
    public static readonly DateTimeZone NewYork = DateTimeZoneProviders.Tzdb["America/New_York"];
    public static readonly LocalDate NewYear = new(2026, 1, 1);

    /// <summary>Midnight of 1 January 2026 in New York, 05:00 UTC.</summary>
    public static readonly long Midnight = Instant.FromUtc(2026, 1, 1, 5, 0).ToUnixTimeSeconds();

    /// <summary>Quarter-hours from an instant on, one after the other.</summary>
    public static List<RawReading> Run(long start, params double[] watts) =>
        [.. watts.Select((load, i) => new RawReading(start + i * Quarter, Quarter, load) { Line = i + 2 })];

    /// <summary>Quarter-hours of whole local days, each value told by its time.</summary>
    public static List<RawReading> Days(LocalDate first, int days, Func<LocalDateTime, double> watts)
    {
        var (start, end) = (NewYork.AtStartOfDay(first).ToInstant(), NewYork.AtStartOfDay(first.PlusDays(days)).ToInstant());
        var readings = new List<RawReading>();
        for (var at = start; at < end; at += Duration.FromSeconds(Quarter))
            readings.Add(new(at.ToUnixTimeSeconds(), Quarter, watts(at.InZone(NewYork).LocalDateTime)));
        return readings;
    }

    public static double?[] FirstOf(CleanedMeter meter, int count) =>
        [.. meter.Year(NewYear, "Invented", Engine.Catalogue.Provenance.None).Watts.Take(count)];
}
