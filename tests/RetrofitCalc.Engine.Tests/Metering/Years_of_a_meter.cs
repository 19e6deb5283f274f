using NodaTime;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Metering;
using static RetrofitCalc.Engine.Tests.Metering.Readings;

namespace RetrofitCalc.Engine.Tests.Metering;

public class Years_of_a_meter
{
    private static IReadOnlyList<MeterSpan> Spans(CleanedMeter meter) => BillingSpans.Of(meter, new());

    /// <summary>Clocks in New York go forward on 8 March and back on 1 November 2026 (S-21): 365 × 96 quarter-hours, none missing.</summary>
    [Fact]
    public void have_no_gap_in_spring_and_no_double_in_autumn()
    {
        var meter = MeterCleaning.Of(Days(NewYear, 365, at => at.Hour), NewYork);
        Assert.Empty(meter.Findings);
        var span = Assert.Single(Spans(meter));
        Assert.Equal((NewYear, new LocalDate(2026, 12, 31), 35_040, 0), (span.First, span.Last, span.Intervals, span.Missing));
        var watts = meter.Year(NewYear, "Invented", Provenance.None).Watts;
        var firstOfSpring = 66 * 96; // 7 March is the 66th day
        Assert.Equal([1, 1, 1, 1, 3, 3], watts.Skip(firstOfSpring + 4).Take(6));
    }

    [Fact]
    public void are_offered_newest_first_when_there_are_several()
    {
        var meter = MeterCleaning.Of(Days(new(2023, 6, 1), 1308, _ => 1000), NewYork);
        Assert.Equal((new LocalDate(2023, 6, 1), new LocalDate(2026, 12, 29)), (meter.FirstDay, meter.LastDay));
        // The newest twelve whole calendar months begin on 1 December 2025, and each whole years before it; then calendar years and the first.
        Assert.Equal(
            [new(2025, 12, 1), new(2025, 1, 1), new(2024, 12, 1), new(2024, 1, 1), new(2023, 12, 1), new(2023, 6, 1)],
            Spans(meter).Select(span => span.First).ToArray());
    }

    [Fact]
    public void of_which_more_than_a_quarter_is_unknown_are_not_offered()
    {
        Assert.Empty(Spans(MeterCleaning.Of(Days(NewYear, 270, _ => 1), NewYork)));
        Assert.Equal(0.753, Spans(MeterCleaning.Of(Days(NewYear, 275, _ => 1), NewYork))[0].KnownShare, 0.001);
    }

    [Fact]
    public void of_a_leap_year_have_a_day_more() =>
        Assert.Equal(366 * 96, Assert.Single(Spans(MeterCleaning.Of(Days(new(2028, 1, 1), 366, _ => 1), NewYork))).Intervals);

    /// <summary>The clocks of Lord Howe Island move by half an hour, so an hourly grid from local midnight falls between the hours of UTC for half the year.</summary>
    [Fact]
    public void begin_at_local_midnight_in_every_zone()
    {
        var island = DateTimeZoneProviders.Tzdb["Australia/Lord_Howe"];
        var start = island.AtStartOfDay(new(2026, 1, 1)).ToInstant().ToUnixTimeSeconds();
        var meter = MeterCleaning.Of([.. Enumerable.Range(0, 8760).Select(i => new RawReading(start + i * 3600L, 3600, i))], island);
        var year = meter.Year(new(2026, 1, 1), "Invented", Provenance.None);
        Assert.Equal((8760, 0, 8759), (year.Watts.Count, year.Watts[0], year.Watts[^1]));
    }
}
