using NodaTime;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Metering;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Web.Tests.Features.Meter;

/// <summary>Meter years simple enough to read off. Invented.</summary>
internal static class MeterSamples
{
    public static DateTimeZone Zone { get; } = DateTimeZoneProviders.Tzdb["America/New_York"];

    /// <summary>2027, half-hourly: 20 kW from 22:00 to 6:00 and 50 kW by day.</summary>
    public static MeterYear DayAndNight(int minutes = 30) => Of(minutes, time => time.Hour is >= 6 and < 22 ? 50_000 : 20_000);

    public static MeterYear Of(int minutes, Func<LocalDateTime, double?> watts)
    {
        var empty = new MeterYear
        {
            Name = "Invented meter", Source = new Provenance(EvidenceKind.Invented, "invented"), FirstDay = new LocalDate(2027, 1, 1), IntervalMinutes = minutes,
            Watts = new double?[MeterTimes.CountOf(new LocalDate(2027, 1, 1), minutes, Zone)],
        };
        return empty with { Watts = [.. MeterTimes.Of(empty, Zone).Select(time => watts(time.LocalDateTime))] };
    }
}
