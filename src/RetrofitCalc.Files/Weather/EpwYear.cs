using System.Globalization;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Files.Weather;

/// <summary>A year of outdoor air as a weather file gives it.</summary>
/// <param name="Place">City, state or province, country.</param>
/// <param name="Source">Kind of data and station, as the file says.</param>
/// <param name="UtcOffset">Standard time of the file, ahead of UTC. [h]</param>
/// <param name="DryBulb">Temperature of each of 8,760 hours; null where the file has none. [°C]</param>
/// <param name="HasLeapDay">The file has 8,784 hours; those of 29 February are left out.</param>
public sealed record EpwYear(string Place, string Source, double UtcOffset, IReadOnlyList<double?> DryBulb, bool HasLeapDay)
{
    /// <summary>How missing hours are filled, when the user agrees.</summary>
    public const string FillRule = "by a straight line from the hour before to the hour after";

    /// <summary>Longest run of hours that may be filled: a straight line over more than a night would hide the day.</summary>
    public const int LongestFill = 12;

    /// <summary>Runs of hours without a temperature.</summary>
    public IReadOnlyList<MissingHours> Missing { get; } = [.. RunsOf(DryBulb)];

    public int MissingCount => Missing.Sum(run => run.Count);

    /// <summary>Why missing hours cannot be filled; null when they can.</summary>
    public string? WhyNotFilled => Missing.FirstOrDefault(run => run.Count > LongestFill) is { } longest
        ? $"{longest} are missing, {longest.Count} in a row; at most {LongestFill} in a row can be filled {FillRule}. Use another weather file."
        : null;

    /// <summary>The year for the study, missing hours filled.</summary>
    /// <exception cref="InvalidOperationException">Hours are missing that cannot be filled.</exception>
    public WeatherYear ToWeather()
    {
        if (WhyNotFilled is { } reason) throw new InvalidOperationException(reason);
        var filled = MissingCount == 0 ? "" : $"; {MissingCount} missing {(MissingCount == 1 ? "hour" : "hours")} filled {FillRule}";
        return new WeatherYear
        {
            Name = Place,
            Source = new Provenance(EvidenceKind.Tested, $"Weather file (EPW), {Source}{filled}"),
            UtcOffset = UtcOffset,
            DryBulb = [.. DryBulb.Select((known, hour) => known ?? Between(hour))],
        };
    }

    /// <summary>On the line between the nearest known hours; the year goes round.</summary>
    private double Between(int hour)
    {
        var (before, after) = (1, 1);
        while (At(hour - before) is null) before++;
        while (At(hour + after) is null) after++;
        var (from, to) = (At(hour - before)!.Value, At(hour + after)!.Value);
        return Math.Round(from + (to - from) * before / (before + after), 2);
    }

    private double? At(int hour) => DryBulb[(hour + DryBulb.Count) % DryBulb.Count];

    private static IEnumerable<MissingHours> RunsOf(IReadOnlyList<double?> hours)
    {
        for (var hour = 0; hour < hours.Count; hour++)
        {
            if (hours[hour] is not null) continue;
            var first = hour;
            while (hour < hours.Count && hours[hour] is null) hour++;
            yield return new MissingHours(first, hour - first);
        }
    }
}

/// <summary>A run of hours without a temperature.</summary>
/// <param name="First">Hour of the year. [0-based]</param>
/// <param name="Count">Hours.</param>
public sealed record MissingHours(int First, int Count)
{
    /// <summary>"hour 3 of 5 January", or "hour 3 of 5 January to hour 2 of 6 January".</summary>
    public override string ToString() => Count == 1 ? Name(First) : $"{Name(First)} to {Name(First + Count - 1)}";

    private static string Name(int hour) =>
        string.Create(CultureInfo.InvariantCulture, $"hour {hour % 24 + 1} of {new DateOnly(2027, 1, 1).AddDays(hour / 24):d MMMM}");
}
