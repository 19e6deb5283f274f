using NodaTime;
using RetrofitCalc.Engine.Metering;
using static RetrofitCalc.Engine.Tests.Metering.Readings;

namespace RetrofitCalc.Engine.Tests.Metering;

/// <summary>The rules are conventions of this program, stated in docs/equations.md; the numbers are invented.</summary>
public class Cleaning_of_meter_readings
{
    private static CleanedMeter Clean(params RawReading[] readings) => MeterCleaning.Of(readings, NewYork);

    private static MeterFinding Only(CleanedMeter meter) => Assert.Single(meter.Findings);

    [Fact]
    public void finds_nothing_in_an_even_row()
    {
        var meter = MeterCleaning.Of(Run(Midnight, 100, 200, 300), NewYork);
        Assert.Empty(meter.Findings);
        Assert.Equal(15, meter.IntervalMinutes);
        Assert.Equal([100, 200, 300, null], FirstOf(meter, 4));
    }

    [Fact]
    public void counts_what_is_missing_and_leaves_it_unknown()
    {
        var meter = Clean([.. Run(Midnight, 100), .. Run(Midnight + 4 * Quarter, 500)]);
        Assert.Equal((MeterFindingKind.Missing, 3, new LocalDateTime(2026, 1, 1, 0, 15)), (Only(meter).Kind, Only(meter).Count, Only(meter).First[0].Time));
        Assert.Equal([100, null, null, null, 500], FirstOf(meter, 5));
    }

    [Fact]
    public void counts_the_same_reading_once()
    {
        var meter = Clean([.. Run(Midnight, 100, 200), new RawReading(Midnight, Quarter, 100) { Line = 9 }]);
        Assert.Equal([MeterFindingKind.SameTwice, MeterFindingKind.OutOfOrder], meter.Findings.Select(f => f.Kind));
        Assert.Equal([100, 200, null], FirstOf(meter, 3));
    }

    [Fact]
    public void takes_the_later_of_two_different_values()
    {
        var meter = Clean(new RawReading(Midnight, Quarter, 100) { Line = 2 }, new RawReading(Midnight, Quarter, 130) { Line = 3 });
        Assert.Equal((MeterFindingKind.DifferentTwice, 1, 3), (Only(meter).Kind, Only(meter).Count, Only(meter).First[0].Line));
        Assert.Equal([130, null], FirstOf(meter, 2));
    }

    [Fact]
    public void sorts_what_is_out_of_order()
    {
        var meter = Clean([.. Run(Midnight + 2 * Quarter, 300), .. Run(Midnight, 100, 200)]);
        Assert.Equal((MeterFindingKind.OutOfOrder, 2), (Only(meter).Kind, Only(meter).Count));
        Assert.Equal([100, 200, 300], FirstOf(meter, 3));
    }

    [Fact]
    public void keeps_export_as_a_negative_load()
    {
        var meter = MeterCleaning.Of(Run(Midnight, 100, -50), NewYork);
        Assert.Equal((MeterFindingKind.Negative, 1), (Only(meter).Kind, Only(meter).Count));
        Assert.Equal([100, -50], FirstOf(meter, 2));
    }

    /// <summary>An hour at 1,000 W is four quarter-hours at 1,000 W; three five-minute readings of 100, 200 and 600 W average 300 W.</summary>
    [Fact]
    public void spreads_longer_and_gathers_shorter_readings_so_that_energy_is_kept()
    {
        var fine = Enumerable.Range(0, 3).Select(i => new RawReading(Midnight + 14 * Quarter + i * 300, 300, new[] { 100, 200, 600 }[i]));
        var meter = Clean([.. Run(Midnight, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10), new RawReading(Midnight + 10 * Quarter, 3600, 1000), .. fine]);
        Assert.Equal((MeterFindingKind.OtherLength, 4), (Only(meter).Kind, Only(meter).Count));
        Assert.Equal([10, 1000, 1000, 1000, 1000, 300], FirstOf(meter, 15)[9..]);
    }

    /// <summary>The third reading begins five minutes before the second ends, and ends five minutes before the fourth begins.</summary>
    [Fact]
    public void counts_no_time_twice_when_readings_overlap()
    {
        var meter = Clean([.. Run(Midnight, 100, 200), new RawReading(Midnight + Quarter + 600, Quarter, 400), .. Run(Midnight + 3 * Quarter, 500)]);
        Assert.Equal([(MeterFindingKind.Missing, 1), (MeterFindingKind.Overlapping, 1)], meter.Findings.Select(f => (f.Kind, f.Count)));
        Assert.Equal([100, 200, null, 500], FirstOf(meter, 4));
    }

    [Fact]
    public void counts_values_the_file_itself_doubts()
    {
        var meter = Clean(new RawReading(Midnight, Quarter, 100) { Marks = ReadingMarks.Estimated });
        Assert.Equal(MeterFindingKind.Estimated, Only(meter).Kind);
        Assert.Equal([100], FirstOf(meter, 1));
    }

    [Fact]
    public void lays_no_grid_for_daily_readings_or_for_none()
    {
        Assert.Equal(0, Clean(new RawReading(Midnight, 86400, 100)).IntervalMinutes);
        var nothing = Clean();
        Assert.Equal((0, 0), (nothing.IntervalMinutes, BillingSpans.Of(nothing, new()).Count));
        Assert.Throws<InvalidOperationException>(() => nothing.Year(NewYear, "none", Engine.Catalogue.Provenance.None));
        Assert.Throws<ArgumentException>(() => Clean(new RawReading(Midnight, 0, 100)));
    }

    [Theory, InlineData(60, 5), InlineData(300, 5), InlineData(600, 30), InlineData(900, 15), InlineData(1200, 60), InlineData(1800, 30), InlineData(3600, 60)]
    public void lays_the_finest_grid_that_holds_whole_readings(int seconds, int minutes) =>
        Assert.Equal(minutes, Clean(new RawReading(Midnight, seconds, 1), new RawReading(Midnight + seconds, seconds, 1)).IntervalMinutes);
}
