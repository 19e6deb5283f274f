using NodaTime;
using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Metering;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Files.Examples;

/// <summary>A made-up year of quarter-hourly meter readings, the same on every machine.</summary>
/// <remarks>
/// The readings are the example's own present lighting with its plant, as the engine sees them, and on top what a nursery draws besides:
/// fans and pumps day and night, irrigation in the growing season's mornings, cold rooms and heating fans that follow the invented
/// weather, offices and packing machines on working days, and an unrest that dies away over an hour or two. All of it is invented.
/// </remarks>
internal sealed class InventedMeter
{
    private const ulong QuillmereSeed = 20_260_115;
    private const int Minutes = 15;
    private const int MeterStepWatts = 10;
    private const double Persistence = 0.8;
    private const double UnrestWatts = 700;
    private const double LeastWatts = 12_000;
    private static readonly LocalDate FirstDay = new(2026, 1, 1);

    private readonly Study _study;
    private readonly InventedNumbers _numbers = new(QuillmereSeed);

    private InventedMeter(Study study) => _study = study;

    /// <summary>The year 2026 of the example.</summary>
    /// <param name="study">The example, with its weather.</param>
    public static MeterYear Quillmere(Study study) => new InventedMeter(study).Year();

    private MeterYear Year()
    {
        var lighting = PresentLoad.Watts(_study, FirstDay, Minutes);
        var year = new MeterYear
        {
            Name = "Quillmere main meter (invented)",
            Source = new Provenance(EvidenceKind.Invented, $"Invented meter year, generated from seed {QuillmereSeed}: the example's lighting and a made-up rest"),
            FirstDay = FirstDay,
            IntervalMinutes = Minutes,
            Watts = new double?[lighting.Count],
        };
        var starts = MeterTimes.Of(year, DateTimeZoneProviders.Tzdb[_study.Site.TimeZone]).ToList();
        var unrest = 0.0;
        return year with
        {
            Watts = [.. lighting.Select((lit, i) =>
            {
                unrest = Persistence * unrest + UnrestWatts * _numbers.Normal();
                return (double?)(Math.Ceiling((lit + Math.Max(LeastWatts, Rest(starts[i]) + unrest)) / MeterStepWatts) * MeterStepWatts);
            })],
        };
    }

    private double Rest(OffsetDateTime start)
    {
        var (hour, outdoor) = (start.Hour + start.Minute / 60.0, Outdoor(start.ToInstant()));
        var fans = 15_000 + 3_000 * Hump(hour, 13, 7);
        var irrigation = start.Month is >= 3 and <= 10 && start.Hour is >= 6 and < 10 && start.Minute < 30 ? 5_500 : 0;
        var coldRooms = 8_000 + 350 * Math.Max(0, outdoor - 4);
        var heatingFans = 280 * Math.Max(0, 10 - outdoor);
        return fans + irrigation + coldRooms + heatingFans + (IsWorking(start.Date) ? 15_000 * Hump(hour, 11.75, 5.5) : 2_000);
    }

    /// <summary>Outdoor temperature of the example's weather year, which counts hours of standard time.</summary>
    private double Outdoor(Instant instant)
    {
        var weather = _study.Weather!;
        var hours = (instant - Instant.FromUtc(FirstDay.Year, 1, 1, 0, 0)).TotalHours + weather.UtcOffset;
        return weather.DryBulb[(int)Math.Clamp(Math.Floor(hours), 0, weather.DryBulb.Count - 1)];
    }

    private bool IsWorking(LocalDate day) =>
        day.DayOfWeek is not (IsoDayOfWeek.Saturday or IsoDayOfWeek.Sunday) && !_study.Tariff.Holidays.Any(holiday => holiday.IsOn(day));

    /// <summary>1 at its middle, 0 beyond its half-width. [h]</summary>
    private static double Hump(double hour, double middle, double halfWidth) =>
        Math.Abs(hour - middle) < halfWidth ? Math.Cos(Math.PI / 2 * (hour - middle) / halfWidth) : 0;
}
