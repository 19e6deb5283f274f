using RetrofitCalc.Files.Examples;
using RetrofitCalc.Files.Studies;
using RetrofitCalc.Files.Tests.Weather;

namespace RetrofitCalc.Files.Tests.CommandLine;

public sealed class Weather_on_the_command_line : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("retrofitcalc-weather-");

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public void goes_into_a_study_and_gaps_are_filled_only_when_asked()
    {
        var file = Save(EpwText.Lines(hour => hour == 5 ? 99.9 : 12.5));
        var refused = Import(file);
        Assert.Equal(1, refused.ExitCode);
        Assert.Contains("hour 6 of 1 January. Give --fill-gaps", refused.Errors);
        Assert.False(File.Exists(Place("new.json")));
        var taken = Import(file, "--fill-gaps");
        Assert.Equal((0, ""), (taken.ExitCode, taken.Errors));
        using var written = File.OpenRead(Place("new.json"));
        Assert.All(StudyFile.Read(written).Value!.Weather!.DryBulb, celsius => Assert.Equal(12.5, celsius));
    }

    [Fact]
    public void that_is_broken_is_told_by_line_and_nothing_is_written()
    {
        var run = Import(Save(EpwText.Lines(_ => 12.5).Take(400)));
        Assert.Equal(1, run.ExitCode);
        Assert.Contains("line 400", run.Errors);
        Assert.False(File.Exists(Place("new.json")));
    }

    private (int ExitCode, string Output, string Errors) Import(string file, params string[] more)
    {
        var study = Place("study.json");
        File.WriteAllBytes(study, StudyFile.Write(WorkedExample.Load()));
        var run = BuiltProgram.Run(["import-weather", study, file, "--out", Place("new.json"), .. more]);
        return (run.ExitCode, run.Output, run.Errors);
    }

    private string Save(IEnumerable<string> lines)
    {
        File.WriteAllLines(Place("place.epw"), lines);
        return Place("place.epw");
    }

    private string Place(string name) => Path.Combine(_folder.FullName, name);
}
