using NodaTime;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Tests.Billing;

/// <summary>Energy and peaks of the sample study by brute force; shares no code with the engine but its input types.</summary>
internal static class MinuteLoop
{
    // Sample catalogue: two 29 W lamps at 0.88 / 0.93 on 40 luminaires; three in two steps on 12; 158 W on 20.
    private const double LampKilowatts = 0.029 * 0.88 / 0.93;

    public const double HallKilowatts = 0.158 * 20;

    /// <summary>Energy by charge and peak by demand charge of the whole load.</summary>
    public static Dictionary<(int Month, BillLineKind Kind, int Charge), double> Run(Study study) =>
        Quantities(study, [.. Lighting(study, HallKilowatts).Select(lighting => lighting + study.Site.BaseLoad.Kilowatts)]);

    /// <summary>Energy by charge and peak by demand charge of any load.</summary>
    public static Dictionary<(int Month, BillLineKind Kind, int Charge), double> Quantities(Study study, double[] kilowatts) =>
        Meter(DateTimeZoneProviders.Tzdb[study.Site.TimeZone], Start(study), kilowatts);

    /// <summary>Lighting in each minute of 2027. [kW]</summary>
    public static double[] Lighting(Study study, double hallKilowatts)
    {
        var zone = DateTimeZoneProviders.Tzdb[study.Site.TimeZone];
        var start = Start(study);
        var kilowatts = new double[(int)(zone.AtStartOfDay(new LocalDate(2028, 1, 1)).ToInstant() - start).TotalMinutes];
        Light(study.Areas[0], zone, start, kilowatts, step => step is null ? LampKilowatts * (80 + 36) : LampKilowatts * (80 + 12));
        Light(study.Areas[1], zone, start, kilowatts, _ => hallKilowatts);
        return kilowatts;
    }

    private static Instant Start(Study study) => DateTimeZoneProviders.Tzdb[study.Site.TimeZone].AtStartOfDay(new LocalDate(2027, 1, 1)).ToInstant();

    private static void Light(Area area, DateTimeZone zone, Instant start, double[] kilowatts, Func<string?, double> drawn)
    {
        var lit = new double[kilowatts.Length];
        for (var day = new LocalDate(2026, 12, 31); day.Year < 2028; day = day.PlusDays(1))
        {
            if (Hours(area, day) is not { } hours)
                continue;
            var on = zone.AtLeniently(day + hours.On).ToInstant();
            var off = hours.Counts
                ? on + Duration.FromMinutes((Minute(hours.Off) - Minute(hours.On) + 1440) % 1440)
                : zone.AtLeniently((hours.Off > hours.On ? day : day.PlusDays(1)) + hours.Off).ToInstant();
            var from = (int)(on - start).TotalMinutes;
            // From here on this day rules: what an earlier day left lit is overwritten, dark time after "off" included.
            for (var minute = Math.Max(0, from); minute < lit.Length; minute++)
            {
                var burns = minute < (off - start).TotalMinutes;
                if (!burns && lit[minute] == 0)
                    break;
                lit[minute] = burns ? drawn(hours.Step) : 0;
            }
        }
        for (var minute = 0; minute < lit.Length; minute++)
            kilowatts[minute] += lit[minute];
    }

    private static (LocalTime On, LocalTime Off, bool Counts, string? Step)? Hours(Area area, LocalDate day)
    {
        if (area.Weekly is { } weekly)
            return day is { Month: 7, Day: 7 } || !weekly.Hours[0].Days.Contains(day.DayOfWeek) ? null : (weekly.Hours[0].On, weekly.Hours[0].Off, false, null);
        if (day.Month is > 3 and < 11)
            return null;
        var first = new LocalDate(day.Month >= 11 ? day.Year : day.Year - 1, 11, 1);
        var stages = area.Seasons[0].Stages;
        var stage = Period.Between(first, day, PeriodUnits.Days).Days < stages[0].Days ? stages[0] : stages[1];
        return (stage.LightsOn, stage.LightsOff, stage.ClockRule == ClockRule.CountsHours, stage.LitStep);
    }

    private static Dictionary<(int, BillLineKind, int), double> Meter(DateTimeZone zone, Instant start, double[] kilowatts)
    {
        var sums = new Dictionary<(int, BillLineKind, int), double>();
        var quarter = new List<double>();
        var half = new List<double>();
        for (var minute = 0; minute < kilowatts.Length; minute++)
        {
            var local = (start + Duration.FromMinutes(minute)).InZone(zone).LocalDateTime;
            var summer = local.Month is >= 6 and <= 9;
            var weekday = local.DayOfWeek is not (IsoDayOfWeek.Saturday or IsoDayOfWeek.Sunday) && local is not { Month: 7, Day: 4 };
            var onPeak = summer && weekday && local.Hour is >= 12 and < 20;
            var charge = (local.Month, BillLineKind.Energy, onPeak ? 0 : summer ? 1 : 2);
            sums[charge] = sums.GetValueOrDefault(charge) + kilowatts[minute] / 60;
            Window(sums, quarter, 15, local, kilowatts[minute], 0, counts: true);
            Window(sums, half, 30, local, kilowatts[minute], 1, counts: onPeak);
        }
        return sums;
    }

    private static void Window(
        Dictionary<(int, BillLineKind, int), double> sums, List<double> window, int length, LocalDateTime local, double kilowatts, int charge, bool counts)
    {
        if (local.Minute % length == 0)
            window.Clear();
        window.Add(kilowatts);
        if (window.Count != length || !counts)
            return;
        var key = (local.Month, BillLineKind.Demand, charge);
        sums[key] = Math.Max(sums.GetValueOrDefault(key), window.Average());
    }

    private static int Minute(LocalTime time) => time.Hour * 60 + time.Minute;
}
