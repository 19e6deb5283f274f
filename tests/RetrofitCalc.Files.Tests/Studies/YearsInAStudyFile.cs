using System.Diagnostics;
using System.Text;
using NodaTime;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Studies;

namespace RetrofitCalc.Files.Tests.Studies;

public class A_meter_year_in_a_study_file
{
    private static Study Metered(int values) => SmallStudy.Make() with
    {
        Meter = new MeterYear
        {
            Name = "Invented meter", FirstDay = new LocalDate(2026, 1, 1), IntervalMinutes = 15,
            Watts = [.. Enumerable.Range(0, values).Select(i => i % 1000 == 7 ? (double?)null : 40_000 + 17.25 * (i * 7919 % 4001))],
        },
    };

    private static string Written(Study study) => Encoding.UTF8.GetString(StudyFile.Write(study));

    [Fact]
    public void has_a_day_of_quarter_hours_on_each_line()
    {
        var with = Written(Metered(35_040)).Count(c => c == '\n');
        var without = Written(SmallStudy.Make()).Count(c => c == '\n');
        Assert.InRange(with - without, 365, 365 + 12);
    }

    [Fact]
    public void is_read_back_to_the_last_digit()
    {
        var study = Metered(35_040);
        Assert.Equal(study.Meter!.Watts, StudyFile.Read(StudyFile.Write(study)).Value?.Meter?.Watts);
    }

    [Theory]
    [InlineData("\"many\"", "found \"many\"")]
    [InlineData("1e999", "found 1e999")]
    [InlineData("[1, 2]", "found [1, 2]")]
    public void names_the_line_and_column_of_a_value_that_is_no_number(string value, string words)
    {
        var written = Written(Metered(200) with { Meter = Metered(200).Meter! with { Watts = [.. Enumerable.Range(0, 200).Select(i => (double?)(i == 100 ? 123456.5 : 1))] } });
        var problem = Assert.Single(StudyFile.Read(Encoding.UTF8.GetBytes(written.Replace("123456.5", value))).Problems);
        var before = written[..written.IndexOf("123456.5", StringComparison.Ordinal)];
        Assert.Equal("$.study.meter.watts[100]", problem.Path);
        Assert.Equal((before.Count(c => c == '\n') + 1, before.Length - before.LastIndexOf('\n')), (problem.Line, problem.Column));
        Assert.Contains("Must be a number, or null where it is not known; " + words, problem.Message);
    }

    [Fact]
    public void may_not_have_an_unknown_temperature()
    {
        var written = Written(SmallStudy.Make() with { Weather = new WeatherYear { Name = "Invented", DryBulb = [.. Enumerable.Repeat(10.5, 8760)] } });
        var at = written.IndexOf("10.5", StringComparison.Ordinal);
        var problem = Assert.Single(StudyFile.Read(Encoding.UTF8.GetBytes(written[..at] + "null" + written[(at + 4)..])).Problems);
        Assert.Equal(("$.study.weather.dryBulb[0]", "Must be a number; found null."), (problem.Path, problem.Message));
    }

    /// <summary>A second save shares the list with the first: every edit saves the study, and none may wait for the meter.</summary>
    [Fact]
    public void costs_little_to_save_again_and_to_read()
    {
        var study = Metered(35_040);
        var bytes = StudyFile.Write(study);
        StudyFile.Read(bytes);
        Assert.True(Best(() => StudyFile.Write(study with { Name = "Renamed" })) < TimeSpan.FromMilliseconds(50));
        Assert.True(Best(() => StudyFile.Read(bytes)) < TimeSpan.FromMilliseconds(250));
    }

    private static TimeSpan Best(Action work) => Enumerable.Range(0, 8).Min(_ =>
    {
        var watch = Stopwatch.StartNew();
        work();
        return watch.Elapsed;
    });
}
