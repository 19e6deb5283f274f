using System.Globalization;
using NodaTime;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Metering;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Meters;
using RetrofitCalc.Files.Meters.Tables;

namespace RetrofitCalc.Files.Tests.Meters;

public class A_meter_year_as_csv
{
    private static readonly DateTimeZone NewYork = DateTimeZoneProviders.Tzdb["America/New_York"];

    private static readonly MeterYear Year = new()
    {
        Name = "Invented", FirstDay = new(2026, 1, 1), IntervalMinutes = 15, Filled = [new FilledGap(2, 1, "straight line")],
        Watts = [.. Enumerable.Range(0, 35_040).Select(i => i == 40 ? (double?)null : i % 7919 * 1.375)],
    };

    [Fact]
    public void has_starts_with_offsets_kilowatts_and_a_mark_where_filled()
    {
        var lines = System.Text.Encoding.UTF8.GetString(MeterCsv.Write(Year, NewYork)).Split("\r\n");
        Assert.Equal(["Start,kW,Filled", "2026-01-01T00:00:00-05:00,0,", "2026-01-01T00:15:00-05:00,0.001375,", "2026-01-01T00:30:00-05:00,0.00275,filled"], lines[..4]);
        Assert.Equal("2026-01-01T10:00:00-05:00,,", lines[41]);
        Assert.Equal(["2026-03-08T01:45:00-05:00", "2026-03-08T03:00:00-04:00"], lines[(66 * 96 + 8)..(66 * 96 + 10)].Select(line => line.Split(',')[0]));
    }

    [Theory, InlineData("en-US"), InlineData("de-DE")]
    public void is_read_back_as_it_was(string culture)
    {
        var (file, site) = (MeterCsv.Write(Year, NewYork), CultureInfo.GetCultureInfo(culture));
        var guess = MeterTableFile.Look(new MemoryStream(file), site).Value!.Guess;
        var readings = MeterTableFile.Read(new MemoryStream(file), new("Invented", site), guess, NewYork).Value!.Readings;
        var cleaned = MeterCleaning.Of(readings, NewYork);
        Assert.Equal(MeterFindingKind.Missing, Assert.Single(cleaned.Findings).Kind);
        Assert.Equal(Year.Watts, cleaned.Year(BillingSpans.Of(cleaned, new())[0].First, "Invented", Provenance.None).Watts);
    }
}
