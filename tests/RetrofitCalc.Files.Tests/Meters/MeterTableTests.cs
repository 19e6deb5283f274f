using System.Globalization;
using System.Text;
using NodaTime;
using NodaTime.Text;
using RetrofitCalc.Engine.Metering;
using RetrofitCalc.Files.Meters;
using RetrofitCalc.Files.Meters.Tables;
using RetrofitCalc.Files.Tests.Surveys;

namespace RetrofitCalc.Files.Tests.Meters;

public class A_table_of_readings
{
    private static readonly DateTimeZone NewYork = DateTimeZoneProviders.Tzdb["America/New_York"];
    private static readonly CultureInfo English = CultureInfo.GetCultureInfo("en-US");

    private static Stream StreamOf(string text) => new MemoryStream(Encoding.UTF8.GetBytes(text));

    private static MeterSample Look(string text, string culture = "en-US") => MeterTableFile.Look(StreamOf(text), CultureInfo.GetCultureInfo(culture)).Value!;

    private static MeterSource Read(string text, Func<MeterLayout, MeterLayout>? change = null)
    {
        var guess = Look(text).Guess;
        return MeterTableFile.Read(StreamOf(text), new("Invented", English), change?.Invoke(guess) ?? guess, NewYork).Value!;
    }

    private static string[] Starts(MeterSource meter) => [.. meter.Readings.Select(r => InstantPattern.General.Format(Instant.FromUnixTimeSeconds(r.Start)))];

    /// <summary>0.25 and 0.5 kWh in a quarter-hour are 1 and 2 kW. New York is five hours behind UTC in winter.</summary>
    [Theory]
    [InlineData("Start,kWh\n2026-01-15 00:00,0.25\n2026-01-15 00:15,0.5\n")]
    [InlineData("Interval start;Usage (Wh)\n15.01.2026 00:00;250,0\n15.01.2026 00:15;500,0\n")]
    [InlineData("Date\tTime from\tkW\n1/15/2026\t12:00 AM\t1\n1/15/2026\t12:15 AM\t2\n")]
    [InlineData("Interval ending,Demand W\n2026-01-15T00:15,1000\n2026-01-15T00:30,2000\n")]
    [InlineData("Timestamp (UTC),kW,Quality\n2026-01-15T05:00Z,1,ok\n2026-01-15T05:15Z,2,ok\n")]
    [InlineData("Account 77,,\nService address,Invented Lane,\n\nMeter ID,Time,kW\n4711,2026-01-15T01:00:00-04:00,1\n4711,2026-01-15T01:15:00-04:00,2\n")]
    [InlineData("when,value,unit\n2026-01-15 00:15,0.25,kWh\n2026-01-15 00:30,0.5,kWh\n")]
    public void is_understood_by_its_headings_and_cells(string text)
    {
        var meter = Read(text);
        Assert.Equal(["2026-01-15T05:00:00Z", "2026-01-15T05:15:00Z"], Starts(meter));
        Assert.Equal([(900, 1000.0), (900, 2000.0)], meter.Readings.Select(r => (r.Seconds, r.Watts)));
        Assert.Empty(meter.Notes);
    }

    [Fact]
    public void can_be_read_otherwise_than_guessed()
    {
        var meter = Read("a,b\n2026-01-15 05:15,3\n2026-01-15 05:30,5\n",
            layout => layout with { Unit = MeterUnit.Watts, Stamps = StampMeaning.End, Clock = StampClock.Utc });
        Assert.Equal(("2026-01-15T05:00:00Z", 3.0), (Starts(meter)[0], meter.Readings[0].Watts));
        var standard = Read("a,b\n2026-07-15 05:00,3\n2026-07-15 05:15,5\n", layout => layout with { Clock = StampClock.SiteStandard });
        Assert.Equal("2026-07-15T10:00:00Z", Starts(standard)[0]);
    }

    /// <summary>1 February or 2 January? The thirteenth tells.</summary>
    [Fact]
    public void tells_day_from_month_by_dates_that_allow_one_order_only()
    {
        var rows = string.Concat(Enumerable.Range(1, 14).Select(day => $"{day:00}/02/2026 06:00,5\n{day:00}/02/2026 07:00,5\n"));
        Assert.Equal(DateOrder.DayFirst, Look("Start,kW\n" + rows).Guess.Dates);
        Assert.Equal(DateOrder.MonthFirst, Look("Start,kW\n1/2/2026 06:00,5\n1/2/2026 07:00,5\n").Guess.Dates);
        Assert.Equal(DateOrder.DayFirst, Look("Start,kW\n1/2/2026 06:00,5\n1/2/2026 07:00,5\n", "en-GB").Guess.Dates);
    }

    [Fact]
    public void names_cells_it_cannot_read_and_reads_the_rest()
    {
        var meter = Read("Start,kW\n2026-01-15 00:00,1\n2026-01-15 00:15,n/a\n2026-01-15 00:30,\nyesterday,4\n2026-01-15 01:00,5\nTotal,10\n");
        Assert.Equal([1000.0, 5000.0], meter.Readings.Select(r => r.Watts));
        Assert.Equal("4 cells could not be read and count as missing. line 3, column 2: \"n/a\" is not a number. line 4, column 2: The value is blank. line 5, column 1: \"yesterday\" is not a date and time.", Assert.Single(meter.Notes));
    }

    [Theory]
    [InlineData("1,234.5", '.', 1234.5), InlineData("1.234,5", ',', 1234.5), InlineData("-3", '.', -3.0), InlineData("−3", '.', -3.0), InlineData("1 234", ',', 1234.0), InlineData("5E-2", '.', 0.05)]
    [InlineData("1,5", '.', null), InlineData("1.234.5", ',', null), InlineData("12,34.5", '.', null), InlineData("", '.', null), InlineData("1e999", '.', null), InlineData("0x10", '.', null)]
    public void reads_numbers_with_groups_only_where_groups_belong(string text, char mark, double? expected) =>
        Assert.Equal(expected, MeterNumber.Parse(text, mark));

    /// <summary>In New York 2 November 2025 has 25 hours: quarter-hours from 01:00 to 01:45 stand twice in the file.</summary>
    [Fact]
    public void keeps_the_hour_that_repeats_in_autumn()
    {
        var start = Instant.FromUtc(2025, 11, 2, 4, 0);
        var rows = Enumerable.Range(0, 100).Select(i => (start + Duration.FromMinutes(15 * i)).InZone(NewYork).LocalDateTime.ToString("uuuu-MM-dd HH:mm", null) + $",{i}\n");
        var meter = Read("Start,kW\n" + string.Concat(rows));
        Assert.Equal(Enumerable.Range(0, 100).Select(i => (start + Duration.FromMinutes(15 * i)).ToUnixTimeSeconds()), meter.Readings.Select(r => r.Start));
        Assert.Equal(4, MeterCleaning.Of(meter.Readings, NewYork).Findings.Single(f => f.Kind == MeterFindingKind.RepeatedHour).Count);
    }

    /// <summary>A meter that changed from hours to quarter-hours, with a gap of one quarter-hour that must not stretch the reading before it.</summary>
    [Fact]
    public void sees_where_the_interval_changes_and_where_only_a_reading_is_missing()
    {
        var day = new LocalDateTime(2026, 1, 15, 0, 0);
        var hours = Enumerable.Range(0, 24).Select(i => day.PlusHours(i));
        var quarters = Enumerable.Range(0, 96).Where(i => i != 50).Select(i => day.PlusDays(1).PlusMinutes(15 * i));
        var text = "Start,kW\n" + string.Concat(hours.Concat(quarters).Select(at => at.ToString("uuuu-MM-dd HH:mm", null) + ",4\n"));
        var meter = Read(text);
        Assert.Equal([.. Enumerable.Repeat(3600, 24), .. Enumerable.Repeat(900, 95)], meter.Readings.Select(r => r.Seconds));
        Assert.Equal(1, MeterCleaning.Of(meter.Readings, NewYork).Findings.Single(f => f.Kind == MeterFindingKind.Missing).Count);
    }

    /// <summary>8 March 2026 has no 02:00 in New York: its column holds a zero, or nothing.</summary>
    [Theory, InlineData("0"), InlineData("")]
    public void may_have_a_day_in_each_row(string skipped)
    {
        var heads = string.Join(',', Enumerable.Range(0, 24).Select(h => $"{h}:00"));
        var meter = Read($"Date,{heads}\n2026-03-07,{string.Join(',', Enumerable.Range(0, 24))}\n2026-03-08,0,1,{skipped},{string.Join(',', Enumerable.Range(3, 21))}\n");
        Assert.Equal(47, meter.Readings.Count);
        Assert.Empty(MeterCleaning.Of(meter.Readings, NewYork).Findings);
        Assert.All(meter.Readings, r => Assert.Equal(1000.0 * Instant.FromUnixTimeSeconds(r.Start).InZone(NewYork).Hour, r.Watts));
    }

    [Fact]
    public void may_be_a_workbook_with_dates_as_day_numbers()
    {
        // 46037 is 15 January 2026 (day 1 is 1 January 1900, with the leap day that year never had); a quarter-hour is 1/96.
        var book = Workbooks.OneSheet("""
            <row r="1"><c r="A1" t="inlineStr"><is><t>Start</t></is></c><c r="B1" t="inlineStr"><is><t>kWh</t></is></c></row>
            <row r="2"><c r="A2" s="1"><v>46037</v></c><c r="B2"><v>0.25</v></c></row>
            <row r="3"><c r="A3" s="1"><v>46037.010416666664</v></c><c r="B3"><v>0.5</v></c></row>
            """);
        var german = CultureInfo.GetCultureInfo("de-DE");
        var guess = MeterTableFile.Look(new MemoryStream(book), german).Value!.Guess;
        var meter = MeterTableFile.Read(new MemoryStream(book), new("Invented", german), guess, NewYork).Value!;
        Assert.Equal(["2026-01-15T05:00:00Z", "2026-01-15T05:15:00Z"], Starts(meter));
        Assert.Equal([1000.0, 2000.0], meter.Readings.Select(r => r.Watts));
    }

    [Theory]
    [InlineData("", "empty")]
    [InlineData("Area,Count\nHall,4\n", "No row of the table has a date and a number")]
    [InlineData("\0\0\0a", "not a text file")]
    public void of_something_else_says_so(string text, string words) =>
        Assert.Contains(words, Assert.Single(MeterTableFile.Look(StreamOf(text), English).Problems).Message);

    [Fact]
    public void without_end_is_refused()
    {
        using var endless = new EndlessText("Start,kW\n", "2026-01-15 00:00,1\n");
        var layout = new MeterLayout();
        Assert.Contains("2,000,000 readings", Assert.Single(MeterTableFile.Read(endless, new("Endless", English), layout, NewYork).Problems).Message);
    }
}
