using NodaTime;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Checks;

/// <summary>When the meter is read: thirteen dates that make twelve billing months without a gap.</summary>
internal static class TariffReadingCheck
{
    private const int Readings = 13;
    private const int ShortestYear = 362;
    private const int LongestYear = 368;
    private const int ShortestMonth = 15;
    private const int LongestMonth = 45;

    public static void Run(MeterReading reading, Problems problems)
    {
        problems.InRange("Tariff.Reading.DayOfMonth", "Day of the month on which the meter is read", reading.DayOfMonth, 1, 28);
        var dates = reading.Dates;
        if (dates.Count == 0)
            return;
        if (dates.Count != Readings)
            problems.Add("Tariff.Reading.Dates", $"There are {dates.Count} reading dates; give thirteen: the first day of each of twelve billing months, and the day after the last.");
        for (var i = 1; i < dates.Count; i++)
            CheckMonth(dates[i - 1], dates[i], $"Tariff.Reading.Dates[{i}]", problems);
        var days = Period.DaysBetween(dates[0], dates[^1]);
        if (dates.Count == Readings && days is < ShortestYear or > LongestYear)
            problems.Add("Tariff.Reading.Dates", $"The reading dates span {days} days; a year of bills has {ShortestYear} to {LongestYear}.");
    }

    private static void CheckMonth(LocalDate from, LocalDate to, string path, Problems problems)
    {
        var days = Period.DaysBetween(from, to);
        if (days <= 0)
            problems.Add(path, $"The reading of {CheckText.Day(to)} {to.Year} does not come after that of {CheckText.Day(from)} {from.Year}; give the dates in order.");
        else if (days is < ShortestMonth or > LongestMonth)
            problems.Add(path, $"From {CheckText.Day(from)} to {CheckText.Day(to)} {to.Year} are {days} days; a billing month has {ShortestMonth} to {LongestMonth}. {(days > LongestMonth ? "A reading seems to be missing." : "A reading seems to stand twice.")}");
    }
}
