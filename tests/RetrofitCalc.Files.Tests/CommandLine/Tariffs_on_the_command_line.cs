using System.Text.Json.Nodes;
using RetrofitCalc.Files.Studies;
using RetrofitCalc.Files.Tests.Studies;
using RetrofitCalc.Files.Tests.Tariffs;

namespace RetrofitCalc.Files.Tests.CommandLine;

public sealed class Tariffs_on_the_command_line : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("retrofitcalc").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private string Place(string name) => Path.Combine(_folder, name);

    private string SmallFile => Save("small.json", SmallStudy.Text());

    private string Save(string name, string text)
    {
        File.WriteAllText(Place(name), text);
        return Place(name);
    }

    [Fact]
    public void moves_the_chosen_record_into_a_study_and_out_again()
    {
        var rates = Save("rates.json", new JsonArray(SampleRecord.Flat(), SampleRecord.TimeOfUse()).ToJsonString());
        var import = BuiltProgram.Run("import-tariff", SmallFile, rates, "--record", "2", "--out", Place("new.json"));
        Assert.Equal((0, ""), (import.ExitCode, import.Errors));
        Assert.Contains("used      $[1].energyratestructure (line 1)", import.Output);
        using var file = File.OpenRead(Place("new.json"));
        Assert.Equal(["Energy, period 1", "Energy, period 2"], StudyFile.Read(file).Value!.Tariff.Energy.Select(charge => charge.Name).Distinct());
        var export = BuiltProgram.Run("export-tariff", Place("new.json"), Place("rate.json"));
        Assert.Equal((0, "", ""), (export.ExitCode, export.Errors, export.Output));
        Assert.Equal(0.30, JsonNode.Parse(File.ReadAllText(Place("rate.json")))!["items"]![0]!["energyratestructure"]![1]![0]!["rate"]!.GetValue<double>());
    }

    [Fact]
    public void asks_which_of_several_records()
    {
        var rates = Save("rates.json", new JsonArray(SampleRecord.Flat(), SampleRecord.Flat()).ToJsonString());
        var run = BuiltProgram.Run("import-tariff", SmallFile, rates, "--out", Place("new.json"));
        Assert.Equal(1, run.ExitCode);
        Assert.Contains("--record", run.Errors);
        Assert.Equal(1, BuiltProgram.Run("import-tariff", SmallFile, rates, "--record", "3", "--out", Place("new.json")).ExitCode);
        Assert.False(File.Exists(Place("new.json")));
    }

    [Theory]
    [InlineData("{\n]", "line 2, column 1")]
    [InlineData("""{"name": "No price"}""", "has no \"energyratestructure\"")]
    public void writes_nothing_from_a_record_with_problems(string record, string reason)
    {
        var run = BuiltProgram.Run("import-tariff", SmallFile, Save("rate.json", record), "--out", Place("new.json"));
        Assert.Equal(1, run.ExitCode);
        Assert.Contains(reason, run.Errors);
        Assert.False(File.Exists(Place("new.json")));
    }

    // A record in kVA needs the site's power factor, which the small study does not give.
    [Fact]
    public void writes_nothing_when_the_study_lacks_what_the_tariff_needs()
    {
        var record = SampleRecord.Flat();
        record["flatdemandstructure"] = JsonNode.Parse("""[[{"rate": 9}]]""");
        record["flatdemandunit"] = "kVA";
        var run = BuiltProgram.Run("import-tariff", SmallFile, Save("rate.json", record.ToJsonString()), "--out", Place("new.json"));
        Assert.Equal(1, run.ExitCode);
        Assert.Contains("power factor of the site", run.Errors);
        Assert.False(File.Exists(Place("new.json")));
    }
}
