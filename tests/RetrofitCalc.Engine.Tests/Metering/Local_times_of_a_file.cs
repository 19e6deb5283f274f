using NodaTime;
using RetrofitCalc.Engine.Metering;
using static RetrofitCalc.Engine.Tests.Metering.Readings;

namespace RetrofitCalc.Engine.Tests.Metering;

/// <summary>New York: clocks skip 02:00–03:00 on 8 March 2026 and repeat 01:00–02:00 on 1 November 2026 (IANA time zone database).</summary>
public class Local_times_of_a_file
{
    private static string Utc(LocalStamps stamps, LocalDateTime wall, ReadingMarks expected)
    {
        var (instant, marks) = stamps.Next(wall);
        Assert.Equal(expected, marks);
        return Instant.FromUnixTimeSeconds(instant).ToString("uuuu-MM-dd HH:mm", null);
    }

    [Fact]
    public void that_come_twice_are_told_apart_by_their_order()
    {
        var stamps = new LocalStamps(NewYork);
        var wall = new LocalDateTime(2026, 11, 1, 1, 15);
        Assert.Equal("2026-11-01 05:15", Utc(stamps, wall, ReadingMarks.None));
        Assert.Equal("2026-11-01 05:30", Utc(stamps, wall.PlusMinutes(15), ReadingMarks.None));
        Assert.Equal("2026-11-01 06:15", Utc(stamps, wall, ReadingMarks.RepeatedHour));
        Assert.Equal("2026-11-01 06:30", Utc(stamps, wall.PlusMinutes(15), ReadingMarks.RepeatedHour));
    }

    [Fact]
    public void that_were_skipped_shift_forward_and_are_marked() =>
        Assert.Equal("2026-03-08 07:30", Utc(new(NewYork), new(2026, 3, 8, 2, 30), ReadingMarks.NoSuchLocalTime));

    [Fact]
    public void of_any_other_hour_are_what_the_clock_says() =>
        Assert.Equal("2026-07-01 16:00", Utc(new(NewYork), new(2026, 7, 1, 12, 0), ReadingMarks.None));
}
