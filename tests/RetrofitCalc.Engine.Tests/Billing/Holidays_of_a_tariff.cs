using NodaTime;
using RetrofitCalc.Engine.Studies;
using static NodaTime.IsoDayOfWeek;

namespace RetrofitCalc.Engine.Tests.Billing;

/// <summary>Rules of holidays against dates of printed calendars, from memory; any almanac has them.</summary>
public class Holidays_of_a_tariff
{
    // Western Easter Sunday, the table printed in almanacs and prayer books; 22 March and 25 April are the earliest and the latest possible.
    [Theory]
    [InlineData(1818, 3, 22), InlineData(1943, 4, 25), InlineData(1961, 4, 2), InlineData(1981, 4, 19), InlineData(2000, 4, 23), InlineData(2008, 3, 23)]
    [InlineData(2011, 4, 24), InlineData(2016, 3, 27), InlineData(2019, 4, 21), InlineData(2020, 4, 12), InlineData(2021, 4, 4), InlineData(2022, 4, 17)]
    [InlineData(2023, 4, 9), InlineData(2024, 3, 31), InlineData(2025, 4, 20), InlineData(2026, 4, 5), InlineData(2027, 3, 28), InlineData(2028, 4, 16)]
    [InlineData(2029, 4, 1), InlineData(2030, 4, 21), InlineData(2038, 4, 25), InlineData(2285, 3, 22)]
    public void Easter(int year, int month, int day) => Assert.Equal([new LocalDate(year, month, day)], DaysOf(new EasterHoliday(), year));

    // 2027: Good Friday 26 March, Easter Monday 29 March, Ascension 6 May, Whit Monday 17 May.
    [Theory, InlineData(-2, 3, 26), InlineData(1, 3, 29), InlineData(39, 5, 6), InlineData(50, 5, 17)]
    public void days_around_Easter(int after, int month, int day) => Assert.Equal([new LocalDate(2027, month, day)], DaysOf(new EasterHoliday(after), 2027));

    // US federal holidays of 2027 and 2028 as the government's calendar gives them.
    [Theory]
    [InlineData(3, Monday, 1, 0, "2027-01-18", "2028-01-17"), InlineData(3, Monday, 2, 0, "2027-02-15", "2028-02-21")]
    [InlineData(-1, Monday, 5, 0, "2027-05-31", "2028-05-29"), InlineData(1, Monday, 9, 0, "2027-09-06", "2028-09-04")]
    [InlineData(4, Thursday, 11, 0, "2027-11-25", "2028-11-23"), InlineData(4, Thursday, 11, 1, "2027-11-26", "2028-11-24")]
    [InlineData(1, Monday, 11, 1, "2027-11-02", "2028-11-07")]
    public void nth_weekdays(int nth, IsoDayOfWeek weekday, int month, int after, string first, string second)
    {
        var holiday = new WeekdayHoliday(nth, weekday, month, after);
        Assert.Equal([first], DaysOf(holiday, 2027).Select(Text));
        Assert.Equal([second], DaysOf(holiday, 2028).Select(Text));
    }

    // 4 July 2027 is a Sunday, 2026 a Saturday; 1 January 2028 is a Saturday, so the Friday before lies in 2027.
    [Theory]
    [InlineData(7, 4, WeekendMove.Stays, 2027, "2027-07-04"), InlineData(7, 4, WeekendMove.SundayToMonday, 2027, "2027-07-05")]
    [InlineData(7, 4, WeekendMove.SundayToMonday, 2026, "2026-07-04"), InlineData(7, 4, WeekendMove.NearestWeekday, 2026, "2026-07-03")]
    [InlineData(7, 4, WeekendMove.NearestWeekday, 2028, "2028-07-04"), InlineData(1, 1, WeekendMove.NearestWeekday, 2027, "2027-01-01,2027-12-31")]
    [InlineData(12, 31, WeekendMove.SundayToMonday, 2023, ""), InlineData(12, 31, WeekendMove.SundayToMonday, 2024, "2024-01-01,2024-12-31")]
    public void fixed_dates_and_their_moves_from_weekends(int month, int day, WeekendMove moves, int year, string days) =>
        Assert.Equal(days, string.Join(',', DaysOf(new FixedHoliday(new(month, day), moves), year).Select(Text)));

    // A leap day is kept on 28 February of other years.
    [Theory, InlineData(2027, "2027-02-28"), InlineData(2028, "2028-02-29")]
    public void a_leap_day(int year, string day) => Assert.Equal([day], DaysOf(new FixedHoliday(new(2, 29)), year).Select(Text));

    [Fact]
    public void a_single_day() => Assert.Equal(["2027-06-14"], DaysOf(new SingleHoliday(new(2027, 6, 14)), 2027).Select(Text));

    private static IEnumerable<LocalDate> DaysOf(Holiday holiday, int year) =>
        Enumerable.Range(0, 366).Select(n => new LocalDate(year, 1, 1).PlusDays(n)).Where(day => day.Year == year && holiday.IsOn(day));

    private static string Text(LocalDate day) => day.ToString("uuuu-MM-dd", null);
}
