using NodaTime;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Web.Features.Tariffs.Clauses;

/// <summary>How a reader says when the meter is read.</summary>
public enum ReadingKind
{
    CalendarMonths,
    DayOfMonth,
    Dates,
}

/// <summary>When the meter is read, as one of three kinds.</summary>
public static class ReadingEdits
{
    public const int DatesOfAYear = 13;

    public static ReadingKind KindOf(MeterReading reading) =>
        reading.Dates.Count > 0 ? ReadingKind.Dates : reading.DayOfMonth > 1 ? ReadingKind.DayOfMonth : ReadingKind.CalendarMonths;

    /// <summary>A reading of a kind to start from; dates begin with the firsts of the months.</summary>
    public static MeterReading Start(ReadingKind kind, int year) => kind switch
    {
        ReadingKind.DayOfMonth => new MeterReading { DayOfMonth = 15 },
        ReadingKind.Dates => new MeterReading { Dates = [.. Enumerable.Range(0, DatesOfAYear).Select(m => new LocalDate(year, 1, 1).PlusMonths(m))] },
        _ => new MeterReading(),
    };

    public static string Name(ReadingKind kind) => kind switch
    {
        ReadingKind.DayOfMonth => "on the same day of each month",
        ReadingKind.Dates => "on thirteen dates",
        _ => "with the calendar month",
    };
}
