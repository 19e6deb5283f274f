using System.Text;
using System.Text.Json;
using RetrofitCalc.Engine;
using RetrofitCalc.Files.Examples;
using RetrofitCalc.Files.Safety;
using RetrofitCalc.Files.Studies;
using RetrofitCalc.Files.Tests.Studies;

namespace RetrofitCalc.Files.Tests.CommandLine;

public sealed class The_command_line : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("retrofitcalc").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private string Save(string name, string text)
    {
        var path = Path.Combine(_folder, name);
        File.WriteAllText(path, text);
        return path;
    }

    private string SmallFile => Save("small.json", SmallStudy.Text());

    // SmallStudy: (10 + 4) × 59 W = 826 W connected; after 2 × 15 W tubes on the ten: 10 × 30 W + 4 × 59 W = 536 W.
    // Energy: 10 × 59 W × 16 h × 365 + 4 × 59 W × 10 h × 365 = 3,445.6 kWh + 861.4 kWh = 4,307 kWh at 0.20 = 861.40.
    // The clocks change twice in 2027, in the night, outside the lit hours.
    [Fact]
    public void prints_now_and_options_side_by_side()
    {
        var run = BuiltProgram.Run("evaluate", SmallFile);
        Assert.Equal((0, ""), (run.ExitCode, run.Errors));
        var rows = run.Output.Split('\n').Select(l => l.Replace('\u00A0', ' ').Split("  ", StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)).ToList();
        Assert.Equal(["Now", "Direct-wire tubes"], rows.First(r => r is ["Now", ..]));
        Assert.Equal(["Connected load", "0.8 kW", "0.5 kW"], rows.First(r => r is ["Connected load", ..]));
        Assert.Equal("4,307 kWh", rows.First(r => r is ["Lighting energy a year", ..])[1]);
        Assert.Equal("$861", rows.First(r => r is ["Cost a year", ..])[1]);
        Assert.Contains("Open safety stops", run.Output);
        Assert.Contains("licensed electrician decide", run.Output);
    }

    [Fact]
    public void prints_the_whole_result_as_json_the_same_as_the_engine()
    {
        var run = BuiltProgram.Run("evaluate", SmallFile, "--json");
        var ours = JsonSerializer.Serialize(StudyEvaluation.Run(SmallStudy.Make(), SafetyRuleFile.Load()), RetrofitJson.Options);
        Assert.Equal(ours, run.Output.TrimEnd());
        Assert.Equal(4307, JsonDocument.Parse(run.Output).RootElement.GetProperty("now").GetProperty("site").GetProperty("lighting").GetDouble(), 1e-9);
    }

    [Fact]
    public void reads_standard_input() =>
        Assert.Equal((0, "Two racks: no problems found. Areas: 2, lines: 2, options: 1."), Trimmed(BuiltProgram.RunWithInput(SmallStudy.Text(), "check", "-")));

    private static (int, string) Trimmed(BuiltProgram run) => (run.ExitCode, run.Output.Trim());

    [Fact]
    public void names_path_and_reason_of_a_malformed_study_and_exits_with_1()
    {
        var broken = Save("broken.json", SmallStudy.Text().Replace("\"count\": 10", "\"count\": \"ten\""));
        foreach (var command in new[] { "evaluate", "check" })
        {
            var run = BuiltProgram.Run(command, broken);
            Assert.Equal((1, ""), (run.ExitCode, run.Output));
            Assert.Contains("column 18, $.study.lines[0].count: Must be a whole number; found \"ten\".", run.Errors);
        }
    }

    [Fact]
    public void names_what_keeps_a_study_from_being_evaluated_and_exits_with_1()
    {
        var run = BuiltProgram.Run("check", Save("nowhere.json", SmallStudy.Text().Replace("\"area\": \"hall\"", "\"area\": \"attic\"")));
        Assert.Equal(1, run.ExitCode);
        Assert.Matches(@"line \d+, column \d+, \$\.study\.lines\[1\]\.area: ", run.Errors);
    }

    [Fact]
    public void exits_with_2_when_asked_wrongly()
    {
        Assert.Equal(2, BuiltProgram.Run("evaluate").ExitCode);
        Assert.Equal(2, BuiltProgram.Run("divine", SmallFile).ExitCode);
        Assert.Equal(2, BuiltProgram.Run("evaluate", SmallFile, "--colour").ExitCode);
        Assert.Equal(2, BuiltProgram.Run().ExitCode);
    }

    [Fact]
    public void exits_with_3_when_a_file_cannot_be_read_or_written()
    {
        var missing = BuiltProgram.Run("evaluate", Path.Combine(_folder, "missing.json"));
        Assert.Equal((3, ""), (missing.ExitCode, missing.Output));
        Assert.Contains("missing.json", missing.Errors);
        Assert.Equal(3, BuiltProgram.Run("evaluate", _folder).ExitCode);
        Assert.Equal(3, BuiltProgram.Run("example", Path.Combine(_folder, "no", "such", "folder.json")).ExitCode);
    }

    [Fact]
    public void writes_the_worked_example_but_never_over_a_file()
    {
        var path = Path.Combine(_folder, "example.json");
        Assert.Equal(0, BuiltProgram.Run("example", path).ExitCode);
        var written = File.ReadAllBytes(path);
        Assert.Equal(StudyFile.Write(WorkedExample.Load()), written);
        Assert.Equal(3, BuiltProgram.Run("example", path).ExitCode);
        Assert.Equal(written, File.ReadAllBytes(path));
        Assert.Equal(Encoding.UTF8.GetString(written), BuiltProgram.Run("example").Output);
    }

    [Fact]
    public void moves_a_survey_out_of_a_study_and_into_another()
    {
        var (csv, grown) = (Path.Combine(_folder, "survey.csv"), Path.Combine(_folder, "grown.json"));
        Assert.Equal(0, BuiltProgram.Run("export", SmallFile, csv).ExitCode);
        var run = BuiltProgram.Run("import", SmallFile, csv, "--out", grown);
        Assert.Equal((0, ""), (run.ExitCode, run.Errors));
        Assert.Contains("Lines added: 2.", run.Output);
        var lines = StudyFile.Read(File.ReadAllBytes(grown)).Value!.Lines;
        Assert.Equal([10, 4, 10, 4], lines.Select(l => l.Count));
        Assert.Equal(4, lines.Select(l => l.Id).Distinct().Count());
    }

    [Fact]
    public void imports_nothing_from_a_survey_with_problems()
    {
        var grown = Path.Combine(_folder, "grown.json");
        var run = BuiltProgram.Run("import", SmallFile, Save("bad.csv", "Area,Count\nPacking hall,4\nPacking hall,-1\n"), "--out", grown);
        Assert.Equal(1, run.ExitCode);
        Assert.Contains("line 3, column 2, Count: \"-1\" is negative; a count is zero or more.", run.Errors);
        Assert.False(File.Exists(grown));
    }

    [Fact]
    public void says_once_that_no_heading_of_a_survey_is_known()
    {
        var grown = Path.Combine(_folder, "grown.json");
        var run = BuiltProgram.Run("import", SmallFile, Save("colons.csv", "Area:Count\nPacking hall:4\nPacking hall:5\n"), "--out", grown);
        Assert.Equal(1, run.ExitCode);
        Assert.Contains("None of the headings in the first row is known. Known are: Area, Line, Set-up", Assert.Single(run.Errors.Split('\n', StringSplitOptions.RemoveEmptyEntries)));
        Assert.False(File.Exists(grown));
    }

    [Fact]
    public void says_in_its_help_what_its_exit_codes_mean()
    {
        var run = BuiltProgram.Run("--help");
        Assert.Equal(0, run.ExitCode);
        foreach (var words in new[] { "0 done", "1 problems in the input", "2 wrong usage", "3 a file cannot be read or written", "evaluate", "check", "example", "import", "export" })
            Assert.Contains(words, run.Output);
    }

    [Fact]
    public void writes_the_report_of_a_study_and_replaces_files_only_when_told()
    {
        var (pdf, xlsx, csv) = (Path.Combine(_folder, "out.pdf"), Path.Combine(_folder, "out.xlsx"), Path.Combine(_folder, "out.csv"));
        string[] asked = ["report", SmallFile, "--pdf", pdf, "--xlsx", xlsx, "--csv", csv, "--date", "2027-03-15"];
        var run = BuiltProgram.Run(asked);
        Assert.Equal((0, ""), (run.ExitCode, run.Errors));
        Assert.Equal("%PDF-"u8, File.ReadAllBytes(pdf).AsSpan(0, 5));
        Assert.Equal("PK"u8, File.ReadAllBytes(xlsx).AsSpan(0, 2));
        Assert.Contains("site: connected load,W,826,536", File.ReadAllText(csv));

        var first = File.ReadAllBytes(pdf);
        Assert.Equal(3, BuiltProgram.Run(asked).ExitCode);
        Assert.Equal(0, BuiltProgram.Run([.. asked, "--overwrite"]).ExitCode);
        Assert.Equal(first, File.ReadAllBytes(pdf));
    }

    [Fact]
    public void asks_for_at_least_one_report_file_a_known_option_and_a_real_date()
    {
        Assert.Equal(2, BuiltProgram.Run("report", SmallFile).ExitCode);
        Assert.Equal(2, BuiltProgram.Run("report", SmallFile, "--csv", Path.Combine(_folder, "a.csv"), "--date", "15.3.2027").ExitCode);
        var unknown = BuiltProgram.Run("report", SmallFile, "--csv", Path.Combine(_folder, "a.csv"), "--option", "magic");
        Assert.Equal(1, unknown.ExitCode);
        Assert.Contains("no option magic", unknown.Errors);
        Assert.False(File.Exists(Path.Combine(_folder, "a.csv")));
    }
}
