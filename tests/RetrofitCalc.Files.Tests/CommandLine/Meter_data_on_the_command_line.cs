using System.Text;
using NodaTime;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Examples;
using RetrofitCalc.Files.Meters;
using RetrofitCalc.Files.Studies;
using RetrofitCalc.Files.Tests.Meters;
using RetrofitCalc.Files.Tests.Studies;

namespace RetrofitCalc.Files.Tests.CommandLine;

public sealed class Meter_data_on_the_command_line : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory().FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private string PathOf(string name) => Path.Combine(_folder, name);

    private string Save(string name, string text)
    {
        File.WriteAllText(PathOf(name), text);
        return PathOf(name);
    }

    private string Small() => Save("small.json", SmallStudy.Text());

    private Study Read(string name) => StudyFile.Read(File.ReadAllBytes(PathOf(name))).Value!;

    [Fact]
    public void move_a_meter_year_out_of_a_study_and_into_another()
    {
        File.WriteAllBytes(PathOf("example.json"), StudyFile.Write(WorkedExample.Load()));
        Assert.Equal(0, BuiltProgram.Run("export-meter", PathOf("example.json"), PathOf("readings.csv")).ExitCode);
        var run = BuiltProgram.Run("import-meter", Small(), PathOf("readings.csv"), "--out", PathOf("metered.json"));
        Assert.Equal((0, ""), (run.ExitCode, run.Errors));
        Assert.Contains("Read as: Kilowatts in \"kW\"; \"Start\" marks the start", run.Output);
        Assert.Contains("Taken in: 35040 intervals of 15 minutes from 2026-01-01 on.", run.Output);
        Assert.Equal(WorkedExample.Load().Meter!.Watts, Read("metered.json").Meter!.Watts);
    }

    [Fact]
    public void fill_gaps_only_when_told()
    {
        var zone = DateTimeZoneProviders.Tzdb["America/New_York"];
        var year = new MeterYear { Name = "x", FirstDay = new(2026, 1, 1), IntervalMinutes = 60, Watts = [.. Enumerable.Range(0, 8760).Select(i => i is > 20 and < 23 ? (double?)null : 60_000)] };
        var readings = Save("gaps.csv", Encoding.UTF8.GetString(MeterCsv.Write(year, zone)));
        var refused = BuiltProgram.Run("import-meter", Small(), readings, "--out", PathOf("metered.json"));
        Assert.Equal(1, refused.ExitCode);
        Assert.Contains("Nothing is known of 2 of the 8760 intervals", refused.Errors);
        Assert.False(File.Exists(PathOf("metered.json")));
        Assert.Equal(0, BuiltProgram.Run("import-meter", Small(), readings, "--fill-gaps", "--out", PathOf("metered.json")).ExitCode);
        Assert.Equal((21, 2), (Assert.Single(Read("metered.json").Meter!.Filled).First, Read("metered.json").Meter!.Filled[0].Count));
    }

    [Fact]
    public void list_the_meters_of_a_feed_to_choose_from()
    {
        var feed = new EspiFeed();
        var two = Save("two.xml", (feed with { More = EspiFeed.Meter("02", "07") + feed.Intervals("02", [(EspiFeed.NewYear, 900, "7")]) }).Text());
        var run = BuiltProgram.Run("import-meter", Small(), two, "--out", PathOf("metered.json"));
        Assert.Equal(1, run.ExitCode);
        Assert.Contains("Choose one with --meter", run.Errors);
        Assert.Contains("2  Meter 02", run.Errors);
        Assert.Contains("no twelve months", BuiltProgram.Run("import-meter", Small(), two, "--meter", "1", "--out", PathOf("metered.json")).Errors);
    }

    [Fact]
    public void say_what_is_wrong_with_a_file()
    {
        Assert.Contains("not well-formed XML", BuiltProgram.Run("import-meter", Small(), Save("cut.xml", "<feed><entry>"), "--out", PathOf("a.json")).Errors);
        Assert.Contains("No row of the table has a date and a number", BuiltProgram.Run("import-meter", Small(), Save("no.csv", "a,b\nc,d\n"), "--out", PathOf("a.json")).Errors);
        Assert.Equal(1, BuiltProgram.Run("export-meter", Small(), PathOf("none.csv")).ExitCode);
        Assert.False(File.Exists(PathOf("a.json")));
    }
}
