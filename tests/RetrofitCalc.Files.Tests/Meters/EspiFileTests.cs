using System.Text;
using NodaTime;
using RetrofitCalc.Engine.Metering;
using RetrofitCalc.Files.Meters;
using RetrofitCalc.Files.Meters.Espi;

namespace RetrofitCalc.Files.Tests.Meters;

/// <summary>Meaning of the codes: NAESB REQ.21 (ESPI) as public samples and lists of its codes print them; codes named only from memory are marked.</summary>
public class An_espi_file
{
    private static MeterSource Only(EspiFeed feed) => Assert.Single(feed.Read().Value!.Meters);

    private static EspiFeed With(params string[] values) => new()
    {
        Readings = [.. values.Select((value, i) => (EspiFeed.NewYear + 900L * i, 900L, value))],
    };

    /// <summary>1,200 Wh and 1,500 Wh in 15 minutes each: 2.7 kWh, 4.8 and 6.0 kW.</summary>
    [Fact]
    public void gives_energy_as_average_watts_in_utc()
    {
        var meter = Only(new());
        Assert.Null(meter.Refusal);
        Assert.Equal([(EspiFeed.NewYear, 900, 4800.0), (EspiFeed.NewYear + 900, 900, 6000.0)], meter.Readings.Select(r => (r.Start, r.Seconds, r.Watts)));
        Assert.Equal(2.7, meter.Energy.KilowattHours, 1e-12);
        Assert.Equal("Meter 01", meter.Name);
        Assert.Equal("energy taken in, Wh, every 15 min, 2 readings", meter.About);
    }

    [Fact]
    public void gives_power_as_it_stands() => Assert.Equal([1200.0, 1500.0], Only(new() { Unit = 38, Accumulation = 12 }).Readings.Select(r => r.Watts));

    [Fact]
    public void gives_energy_sent_out_as_a_negative_load()
    {
        var meter = Only(new() { Flow = 19 }); // 19 reverse: from memory
        Assert.Equal([-4800.0, -6000.0], meter.Readings.Select(r => r.Watts));
        Assert.Contains(meter.Notes, note => note.Contains("sent out"));
    }

    /// <summary>A register of 100, 101.2 and 102.7 kWh grew by 1.2 and 1.5 kWh: 4.8 and 6.0 kW. Codes 1 and 3: from memory.</summary>
    [Theory, InlineData(3), InlineData(1)]
    public void gives_the_load_between_readings_of_a_register(int accumulation) =>
        Assert.Equal([4800.0, 6000.0], Only(With("100000", "101200", "102700") with { Accumulation = accumulation }).Readings.Select(r => Math.Round(r.Watts, 6)));

    [Fact]
    public void knows_nothing_of_an_interval_in_which_the_register_went_back()
    {
        var meter = Only(With("100000", "101200", "300", "900") with { Accumulation = 3 });
        Assert.Equal([4800.0, 2400.0], meter.Readings.Select(r => Math.Round(r.Watts, 6)));
        Assert.Contains(meter.Notes, note => note.Contains("went back 1 time."));
    }

    [Theory]
    [InlineData(169, 0, "0", "It measures therms")]
    [InlineData(73, 0, "0", "It measures varh")]
    [InlineData(72, 15, "0", "multiplier is 15")]
    [InlineData(72, 0, "1", "not a meter of electricity")]
    public void refuses_what_is_no_load_and_says_why(int unit, int multiplier, string service, string words)
    {
        var meter = Only(new() { Unit = unit, Multiplier = multiplier, Service = service });
        Assert.Contains(words, meter.Refusal);
        Assert.Empty(meter.Readings);
    }

    [Fact]
    public void marks_values_that_were_estimated()
    {
        var meter = Only(new() { Quality = "<e:ReadingQuality><e:quality>8</e:quality></e:ReadingQuality>" });
        Assert.All(meter.Readings, reading => Assert.Equal(ReadingMarks.Estimated, reading.Marks));
        Assert.All(Only(new() { Quality = "<e:ReadingQuality><e:quality>17</e:quality></e:ReadingQuality>" }).Readings, reading => Assert.Equal(ReadingMarks.None, reading.Marks));
    }

    [Theory, InlineData(""), InlineData("12.5"), InlineData("many"), InlineData("99999999999999999999")]
    public void counts_a_value_it_cannot_read_as_missing_and_names_the_line(string value)
    {
        var feed = With("1200", value, "1500");
        Assert.Equal([4800.0, 6000.0], Only(feed).Readings.Select(r => r.Watts));
        var second = feed.Text().IndexOf($"<e:value>{value}</e:value>", StringComparison.Ordinal);
        Assert.Contains($"1 reading could not be read, the first on line {feed.Text()[..second].Count(c => c == '\n') + 1}:", Assert.Single(Only(feed).Notes));
    }

    /// <summary>Values of all lengths fall on every border of the reader's buffers; their sum is that of the numbers themselves.</summary>
    [Fact]
    public void loses_no_digit_of_a_long_file()
    {
        var values = Enumerable.Range(0, 20_000).Select(i => i * 7919L % 100_003 * (i % 5 == 0 ? 1 : 13)).ToArray();
        Assert.Equal(values.Sum() / 1000.0, Only(With([.. values.Select(v => $"{v}")])).Energy.KilowattHours, 1e-6);
    }

    [Fact]
    public void keeps_two_meters_apart_by_their_links()
    {
        var feed = new EspiFeed();
        var read = (feed with { More = EspiFeed.Meter("02", "07") + feed.Intervals("02", [(EspiFeed.NewYear, 900, "7")]) }).Read();
        Assert.Equal([("Meter 01", 2), ("Meter 02", 1)], read.Value!.Meters.Select(m => (m.Name, m.Readings.Count)));
    }

    [Fact]
    public void joins_intervals_without_links_to_the_meter_before_them()
    {
        var text = new EspiFeed().Text().Replace("<link", "<other");
        var meter = Assert.Single(EspiFile.Read(new MemoryStream(Encoding.UTF8.GetBytes(text))).Value!.Meters);
        Assert.Equal(2.7, meter.Energy.KilowattHours, 1e-12);
    }

    /// <summary>One public sample prints IntervalBLock; some use a default namespace, some a prefix.</summary>
    [Fact]
    public void reads_misspelt_capitals_and_default_namespaces()
    {
        var text = new EspiFeed().Text().Replace("IntervalBlock>", "IntervalBLock>").Replace("<e:ReadingType>", "<ReadingType xmlns=\"http://naesb.org/espi\">").Replace("</e:ReadingType>", "</ReadingType>");
        Assert.Equal(2.7, Assert.Single(EspiFile.Read(new MemoryStream(Encoding.UTF8.GetBytes(text))).Value!.Meters).Energy.KilowattHours, 1e-12);
    }

    /// <summary>Found by spoilt files: an entry that begins within a reading type.</summary>
    [Fact]
    public void with_its_elements_in_the_wrong_place_is_still_read()
    {
        var text = new EspiFeed().Text().Replace("<e:kind>12</e:kind>", "<entry/><e:kind>12</e:kind>");
        Assert.Equal("The file does not say what unit its numbers are in.", Assert.Single(EspiFile.Read(new MemoryStream(Encoding.UTF8.GetBytes(text))).Value!.Meters).Refusal);
    }

    [Fact]
    public void tells_the_standard_time_of_its_place() =>
        Assert.Equal(Offset.FromHours(-5), (new EspiFeed() with { More = EspiFeed.Entry("t", "", "", "<e:LocalTimeParameters><e:tzOffset>-18000</e:tzOffset></e:LocalTimeParameters>") }).Read().Value!.StandardOffset);

    [Theory]
    [InlineData("<!DOCTYPE feed [<!ENTITY a \"aaaaaaaaaa\">]><feed/>", "document type")]
    [InlineData("<!DOCTYPE feed SYSTEM \"file:///etc/passwd\"><feed/>", "document type")]
    [InlineData("<feed><entry></feed>", "not well-formed")]
    [InlineData("", "not well-formed")]
    [InlineData("<html/>", "not an ESPI file")]
    [InlineData("<UsagePoint xmlns=\"http://naesb.org/espi\"/>", "no interval readings")]
    public void that_is_damaged_or_something_else_says_so(string text, string words)
    {
        var problem = Assert.Single(EspiFile.Read(new MemoryStream(Encoding.UTF8.GetBytes(text))).Problems);
        Assert.Contains(words, problem.Message);
    }

    [Fact]
    public void nested_without_end_is_refused() =>
        Assert.Contains("deeper than any meter file", Assert.Single(EspiFile.Read(new MemoryStream(Encoding.UTF8.GetBytes(string.Concat(Enumerable.Repeat("<a>", 100_000))))).Problems).Message);

    [Fact]
    public void beyond_the_size_limit_is_refused_without_reading_on()
    {
        using var endless = new EndlessText("<feed xmlns=\"http://naesb.org/espi\">", new string(' ', 4096));
        Assert.Contains("larger than 200 MB", Assert.Single(EspiFile.Read(endless).Problems).Message);
        Assert.InRange(endless.Given, MeterLimits.FileMegabytes * 1024L * 1024, MeterLimits.FileMegabytes * 1024L * 1024 + 1_000_000);
    }

    [Fact]
    public void of_millions_of_readings_or_entries_is_refused()
    {
        using var readings = new EndlessText("<IntervalBlock xmlns=\"http://naesb.org/espi\">", "<IntervalReading/>");
        Assert.Contains("2,000,000 readings", Assert.Single(EspiFile.Read(readings).Problems).Message);
        using var entries = new EndlessText("<feed xmlns=\"http://www.w3.org/2005/Atom\">", "<entry/>");
        Assert.Contains("more entries", Assert.Single(EspiFile.Read(entries).Problems).Message);
    }
}
