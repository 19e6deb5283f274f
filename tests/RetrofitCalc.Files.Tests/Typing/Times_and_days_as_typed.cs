using System.Globalization;
using NodaTime;
using RetrofitCalc.Files.Typing;

namespace RetrofitCalc.Files.Tests.Typing;

public class Times_and_days_as_typed
{
    [Theory]
    [InlineData("6", "06:00"), InlineData("6:05", "06:05"), InlineData("1830", "18:30"), InlineData("6 pm", "18:00"), InlineData("6:30 p.m.", "18:30")]
    [InlineData("12 am", "00:00"), InlineData("12:15 pm", "12:15"), InlineData("noon", "12:00"), InlineData("24:00", "00:00"), InlineData(" midnight ", "00:00")]
    public void times_of_day_are_read(string typed, string time) => Assert.Equal(time, ClockText.Write(ClockText.Parse(typed).Value!.Value));

    [Theory]
    [InlineData("25:00"), InlineData("6:60"), InlineData("13 pm"), InlineData("dawn"), InlineData("24:30"), InlineData("-1")]
    public void what_is_no_time_is_refused_with_examples(string typed) =>
        Assert.Equal($"\"{typed}\" is not a time of day. Type it like 6:00, 18:30 or 6:30 pm.", Assert.Single(ClockText.Parse(typed).Problems).Message);

    [Theory]
    [InlineData("en-US", "3/4", 3, 4), InlineData("en-GB", "3/4", 4, 3), InlineData("de-DE", "3.4.", 4, 3), InlineData("en-GB", "03-04", 3, 4)]
    [InlineData("en-US", "Sept 30", 9, 30), InlineData("en-US", "30 september", 9, 30), InlineData("fr-FR", "29 feb", 2, 29)]
    public void days_of_the_year_are_read_in_the_order_of_the_culture(string culture, string typed, int month, int day) =>
        Assert.Equal(new AnnualDate(month, day), AnnualDayText.Parse(typed, CultureInfo.GetCultureInfo(culture)).Value);

    [Theory]
    [InlineData("Feb 30"), InlineData("13/1"), InlineData("Ju 3"), InlineData("spring"), InlineData("Xyz 3")]
    public void what_is_no_day_is_refused_with_examples(string typed) =>
        Assert.Equal($"\"{typed}\" is not a day of the year. Type it like Mar 15 or 03-15.", Assert.Single(AnnualDayText.Parse(typed, CultureInfo.GetCultureInfo("en-US")).Problems).Message);

    [Fact]
    public void every_day_of_a_leap_year_reads_back_as_written()
    {
        var culture = CultureInfo.GetCultureInfo("en-GB");
        foreach (var day in Enumerable.Range(0, 366).Select(i => new LocalDate(2028, 1, 1).PlusDays(i)).Select(d => new AnnualDate(d.Month, d.Day)))
            Assert.Equal(day, AnnualDayText.Parse(AnnualDayText.Write(day, culture), culture).Value);
    }
}
