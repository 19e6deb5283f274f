using RetrofitCalc.Files.Weather;

namespace RetrofitCalc.Files.Tests.Weather;

/// <summary>Fields, limits and the missing value 99.9 as in the EPW data dictionary of EnergyPlus Auxiliary Programs.</summary>
public class A_weather_file
{
    private static Parsed<EpwYear> Read(IEnumerable<string> lines) => EpwFile.Read(EpwText.Stream(lines));

    private static EpwYear Year(Func<int, double> celsius, bool leapDay = false) => Read(EpwText.Lines(celsius, leapDay)).Value!;

    [Fact]
    public void gives_its_place_its_clock_and_8760_temperatures()
    {
        var weather = Year(hour => hour % 50 / 10.0).ToWeather();
        Assert.Equal(("Quillmere, OH, USA", -5.0, 8760), (weather.Name, weather.UtcOffset, weather.DryBulb.Count));
        Assert.Equal([0, 0.1, 0.2], weather.DryBulb.Take(3));
        Assert.Equal(8759 % 50 / 10.0, weather.DryBulb[8759]);
        Assert.Contains("Invented, station 000000", weather.Source.Source);
    }

    [Fact]
    public void of_a_leap_year_leaves_29_February_out()
    {
        var year = Year(_ => 7, leapDay: true);
        Assert.True(year.HasLeapDay);
        Assert.All(year.DryBulb, celsius => Assert.Equal(7, celsius));
    }

    // 99.9 stands for missing; the line from 10 to 13 over two missing hours passes 11 and 12.
    [Fact]
    public void names_missing_hours_and_fills_them_by_a_straight_line()
    {
        var year = Year(hour => hour switch { 27 => 10, 28 or 29 => 99.9, 30 => 13, _ => 5 });
        Assert.Equal("hour 5 of 2 January to hour 6 of 2 January", Assert.Single(year.Missing).ToString());
        var weather = year.ToWeather();
        Assert.Equal([10, 11, 12, 13], weather.DryBulb.Skip(27).Take(4));
        Assert.Contains("2 missing hours filled by a straight line", weather.Source.Source);
    }

    [Fact]
    public void fills_across_the_turn_of_the_year()
    {
        var weather = Year(hour => hour switch { 8758 => 4, 8759 or 0 => 99.9, 1 => 1, _ => 20 }).ToWeather();
        Assert.Equal((3.0, 2.0), (weather.DryBulb[8759], weather.DryBulb[0]));
    }

    [Theory, InlineData(12, true), InlineData(13, false)]
    public void is_not_filled_where_more_than_half_a_day_is_missing(int hours, bool possible)
    {
        var year = Year(hour => hour >= 100 && hour < 100 + hours ? 99.9 : 5);
        Assert.Equal(possible, year.WhyNotFilled is null);
        if (!possible) Assert.Throws<InvalidOperationException>(year.ToWeather);
    }

    public static TheoryData<string, int, int?, Action<List<string>>> Broken => new()
    {
        { "first line must begin with LOCATION", 1, 1, lines => lines.RemoveAt(0) },
        { "Hours ahead of UTC, -12 to 14, must stand here; found \"east\"", 1, 54, lines => lines[0] = lines[0].Replace("-5.0", "east", StringComparison.Ordinal) },
        { "One row for each hour is needed; found \"4\"", 8, 16, lines => lines[7] = "DATA PERIODS,1,4,Data,Sunday,1/1,12/31" },
        { "No line begins with DATA PERIODS", 50, null, lines => lines.RemoveAt(7) },
        { "A temperature between -70 and 70 °C must stand here, or 99.9 where it is missing; found \"warm\"", 9, 20, lines => lines[8] = "1999,1,1,1,60,?9?9,warm,4" },
        { "found \"-71\"", 9, 20, lines => lines[8] = "1999,1,1,1,60,?9?9,-71,4" },
        { "at least 7 fields; this one has 3", 9, 1, lines => lines[8] = "1999,1,1" },
        { "Hour 3 of 1 January must stand here; found month \"1\", day \"1\", hour \"4\"", 11, 6, lines => lines.RemoveAt(10) },
        { "Hour 4 of 1 January must stand here; found month \"1\", day \"1\", hour \"3\"", 12, 6, lines => lines.Insert(11, lines[10]) },
        { "The file ends before hour 24 of 31 December: 8,759 hours are there", 8767, null, lines => lines.RemoveAt(lines.Count - 1) },
        { "The year is complete here, but more rows follow", 8769, 1, lines => lines.Add(lines[8]) },
        { "no line of a weather file is that long", 2, null, lines => lines[1] = new string('x', 30_000) },
        { "larger than 16 MB", 864, null, lines => lines.InsertRange(8, Enumerable.Repeat(new string(' ', 19_600), 2000)) },
        { "more than 10,000 lines", 10_001, null, lines => lines.InsertRange(8, Enumerable.Repeat("", 2000)) },
    };

    [Theory, MemberData(nameof(Broken), DisableDiscoveryEnumeration = true)]
    public void that_is_broken_is_told_by_line_and_column(string message, int line, int? column, Action<List<string>> breakIt)
    {
        var lines = EpwText.Lines(_ => 5);
        breakIt(lines);
        var read = Read(lines);
        Assert.Null(read.Value);
        Assert.Contains(message, read.Problems[0].Message);
        Assert.Equal((line, column), (read.Problems[0].Line, read.Problems[0].Column));
    }

    [Fact]
    public void with_many_wrong_temperatures_names_twenty()
    {
        var lines = EpwText.Lines(_ => 5).Select((line, i) => i > 7 ? line.Replace(",5.0,", ",no,", StringComparison.Ordinal) : line);
        Assert.Equal(20, Read(lines).Problems.Count);
    }

    [Theory, InlineData(""), InlineData("PK\u0003\u0004")]
    public void that_is_none_is_refused(string text) => Assert.NotEmpty(EpwFile.Read(EpwText.Stream([text])).Problems);
}
