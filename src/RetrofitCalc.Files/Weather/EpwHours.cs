using System.Globalization;
using RetrofitCalc.Engine.Heat;

namespace RetrofitCalc.Files.Weather;

/// <summary>Takes the hours of a weather file, which must follow each other from hour 1 of 1 January.</summary>
internal sealed class EpwHours
{
    private const int MostProblems = 20;
    private const int LeapDayStart = 59 * 24;
    private static readonly DateOnly FirstDay = new(2027, 1, 1);

    private readonly List<double?> _hours = new(OutdoorAir.Hours);
    private readonly List<FileProblem> _problems = [];
    private int _leapHours;

    public IReadOnlyList<double?> Hours => _hours;

    public IReadOnlyList<FileProblem> Problems => _problems;

    public bool HasLeapDay => _leapHours > 0;

    /// <summary>Takes a row; false when no more can be taken.</summary>
    public bool Add(EpwFields row)
    {
        if (Place(row) is { } misplaced)
        {
            _problems.Add(misplaced);
            return false;
        }
        var temperature = Temperature(row);
        if (InLeapDay(row)) _leapHours++;
        else _hours.Add(temperature);
        return _problems.Count < MostProblems;
    }

    /// <summary>The problem of a file that ends too early; null when the year is whole.</summary>
    public FileProblem? Unfinished(int line) => _hours.Count == OutdoorAir.Hours && _leapHours is 0 or 24
        ? null
        : new(line, null, "", FormattableString.Invariant($"The file ends before {Expected()}: {_hours.Count + _leapHours:N0} hours are there, a year has 8,760, or 8,784 with a leap day."));

    /// <summary>Rows may be of different years, as months of typical years are; month, day and hour must follow on.</summary>
    private FileProblem? Place(EpwFields row)
    {
        if (_hours.Count == OutdoorAir.Hours)
            return row.Problem(0, "", "The year is complete here, but more rows follow. One year is needed.");
        var found = (row.Whole(1), row.Whole(2), row.Whole(3));
        if (row.Count < 7)
            return row.Problem(0, "", $"A row of hours has at least 7 fields; this one has {row.Count}.");
        if (found == (2, 29, _leapHours + 1) && _hours.Count == LeapDayStart && _leapHours < 24)
            return null;
        var day = FirstDay.AddDays(_hours.Count / 24);
        return found == (day.Month, day.Day, _hours.Count % 24 + 1) && !(_leapHours is > 0 and < 24)
            ? null
            : row.Problem(1, "month, day, hour", $"{Capital(Expected())} must stand here; found month {row.Quoted(1)}, day {row.Quoted(2)}, hour {row.Quoted(3)}. Hours run from 1 to 24.");
    }

    private double? Temperature(EpwFields row)
    {
        const int dryBulb = 6;
        const double missing = 99.9;
        if (row[dryBulb].Length == 0 || row.Number(dryBulb) >= missing) return null;
        if (row.Number(dryBulb) is > -70 and < 70) return row.Number(dryBulb);
        _problems.Add(row.Problem(dryBulb, "dry bulb", $"A temperature between -70 and 70 °C must stand here, or 99.9 where it is missing; found {row.Quoted(dryBulb)}."));
        return null;
    }

    private static bool InLeapDay(EpwFields row) => row.Whole(1) == 2 && row.Whole(2) == 29;

    private string Expected() => _leapHours is > 0 and < 24
        ? $"hour {_leapHours + 1} of 29 February"
        : string.Create(CultureInfo.InvariantCulture, $"hour {_hours.Count % 24 + 1} of {FirstDay.AddDays(Math.Min(_hours.Count, OutdoorAir.Hours - 1) / 24):d MMMM}");

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
