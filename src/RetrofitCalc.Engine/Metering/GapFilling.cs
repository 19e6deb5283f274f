using NodaTime;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Metering;

/// <summary>Fills what is unknown in a meter year. Only for a user who agreed: the result is marked wherever it is used.</summary>
/// <remarks>
/// A gap of up to two hours is bridged by a straight line. A longer one takes, for each interval, the mean of the known intervals at the same
/// time of day on the same kind of day (Monday to Friday, or weekend) within two weeks either side; without any, within the same month;
/// without any, within the year. What has no such neighbour stays unknown. Common practice, no source.
/// </remarks>
public static class GapFilling
{
    private const int LongestLineMinutes = 120;
    private const int DaysAround = 14;

    private const string ByLine = "straight line between the readings before and after";
    private const string ByWeeks = "mean of the same time on the same kind of day, two weeks before and after";
    private const string ByMonth = "mean of the same time on the same kind of day in the same month";
    private const string ByYear = "mean of the same time on the same kind of day in the year";

    /// <summary>The same year with its gaps filled and marked.</summary>
    /// <param name="year">The meter year.</param>
    /// <param name="zone">The site's time zone.</param>
    public static MeterYear Fill(MeterYear year, DateTimeZone zone)
    {
        var watts = year.Watts.ToArray();
        var rules = new string?[watts.Length];
        Days? days = null;
        foreach (var (first, count) in Gaps(year.Watts))
        {
            if (count * year.IntervalMinutes <= LongestLineMinutes && first > 0 && first + count < watts.Length)
                Bridge(watts, rules, first, count);
            else
                FromOtherDays(watts, rules, (first, count), days ??= new(year, zone));
        }
        return year with { Watts = watts, Filled = [.. year.Filled.Concat(Runs(rules)).OrderBy(gap => gap.First)] };
    }

    private static void Bridge(double?[] watts, string?[] rules, int first, int count)
    {
        var (before, after) = (watts[first - 1]!.Value, watts[first + count]!.Value);
        for (var i = 1; i <= count; i++)
            (watts[first + i - 1], rules[first + i - 1]) = (Math.Round(before + (after - before) * i / (count + 1), 3), ByLine);
    }

    private static void FromOtherDays(double?[] watts, string?[] rules, (int First, int Count) gap, Days days)
    {
        for (var i = gap.First; i < gap.First + gap.Count; i++)
            if (days.Like(i) is var (mean, rule))
                (watts[i], rules[i]) = (Math.Round(mean, 3), rule);
    }

    private static IEnumerable<(int First, int Count)> Gaps(IReadOnlyList<double?> watts)
    {
        for (var first = 0; first < watts.Count; first++)
        {
            if (watts[first] is not null) continue;
            var end = first;
            while (end < watts.Count && watts[end] is null) end++;
            yield return (first, end - first);
            first = end;
        }
    }

    private static IEnumerable<FilledGap> Runs(string?[] rules)
    {
        for (var first = 0; first < rules.Length; first++)
        {
            if (rules[first] is not { } rule) continue;
            var end = first;
            while (end + 1 < rules.Length && rules[end + 1] == rule) end++;
            yield return new(first, end - first + 1, rule);
            first = end;
        }
    }

    /// <summary>The known values of the year by day and time of day.</summary>
    private sealed class Days
    {
        private readonly (int Day, int Month, bool Weekend, LocalTime Time)[] _times;
        private readonly Dictionary<LocalTime, List<(int Interval, double Watts)>> _byTime = [];

        public Days(MeterYear year, DateTimeZone zone)
        {
            _times = [.. MeterTimes.Of(year, zone).Select(start =>
                (Period.DaysBetween(year.FirstDay, start.Date), start.Month, start.DayOfWeek is IsoDayOfWeek.Saturday or IsoDayOfWeek.Sunday, start.TimeOfDay))];
            foreach (var (interval, watts) in year.Watts.Index())
                if (watts is { } known)
                    ListOf(interval).Add((interval, known));
        }

        /// <summary>The mean of comparable intervals and the rule that found them; null when there are none.</summary>
        public (double Mean, string Rule)? Like(int interval)
        {
            var (day, month, _, _) = _times[interval];
            return Mean(interval, other => Math.Abs(_times[other].Day - day) <= DaysAround, ByWeeks)
                ?? Mean(interval, other => _times[other].Month == month, ByMonth)
                ?? Mean(interval, _ => true, ByYear);
        }

        private (double Mean, string Rule)? Mean(int interval, Func<int, bool> near, string rule)
        {
            var (sum, count) = (0.0, 0);
            foreach (var (other, watts) in ListOf(interval))
                if (_times[other].Weekend == _times[interval].Weekend && near(other))
                    (sum, count) = (sum + watts, count + 1);
            return count > 0 ? (sum / count, rule) : null;
        }

        private List<(int Interval, double Watts)> ListOf(int interval) =>
            _byTime.TryGetValue(_times[interval].Time, out var list) ? list : _byTime[_times[interval].Time] = [];
    }
}
