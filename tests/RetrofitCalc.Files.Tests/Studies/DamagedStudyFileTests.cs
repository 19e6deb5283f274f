using System.Text;
using CsCheck;
using RetrofitCalc.Files.Studies;

namespace RetrofitCalc.Files.Tests.Studies;

public class A_damaged_study_file
{
    private static Parsed<RetrofitCalc.Engine.Studies.Study> Read(string text) => StudyFile.Read(Encoding.UTF8.GetBytes(text));

    private static FileProblem OnlyProblem(string old, string changed)
    {
        var text = SmallStudy.Text();
        Assert.Contains(old, text);
        var at = text.IndexOf(old, StringComparison.Ordinal);
        var read = Read(text[..at] + changed + text[(at + old.Length)..]);
        Assert.Null(read.Value);
        return Assert.Single(read.Problems);
    }

    [Fact]
    public void names_line_column_path_and_reason_of_text_in_a_number()
    {
        var problem = OnlyProblem("\"count\": 10", "\"count\": \"ten\"");
        var lineOfCount = SmallStudy.Text()[..SmallStudy.Text().IndexOf("\"count\": 10", StringComparison.Ordinal)].Count(c => c == '\n') + 1;
        Assert.Equal(new FileProblem(lineOfCount, 18, "$.study.lines[0].count", "Must be a whole number; found \"ten\"."), problem);
    }

    [Theory]
    [InlineData("\"count\": 10", "\"cuont\": 10", "$.study.lines[0].cuont", "\"cuont\" is not known here.")]
    [InlineData("\"name\": \"Quillmere\",", "", "$.study.site", "\"name\" is missing; it must be text in quotation marks.")]
    [InlineData("\"price\": 0.2", "\"x\": 0.2", "$.study.tariff.energy[0].blocks[0].x", "not known")]
    [InlineData("\"length\": 1.2", "\"length\": -1.2", "$.study.catalogue.lamps[0].length", "Must be a number of metres, zero or more; found -1.2")]
    [InlineData("\"linePower\": 15", "\"linePower\": 1e999", "$.study.catalogue.tubes[0].linePower", "found 1e999")]
    [InlineData("\"startMethod\": \"instant\"", "\"startMethod\": \"warm\"", "$.study.catalogue.ballasts[0].startMethod", "one of \"instant\", \"rapid\", \"programmed\", \"preheat\"; found \"warm\"")]
    [InlineData("\"startMethod\": \"instant\"", "\"startMethod\": 2", "$.study.catalogue.ballasts[0].startMethod", "one of")]
    [InlineData("\"start\": \"2027-01-01\"", "\"start\": \"01/02/2027\"", "$.study.assumptions.start", "a date such as")]
    [InlineData("\"kind\": \"directWire\"", "\"kind\": \"magic\"", "$.study.options[0].measures[0].measure", "found \"magic\"")]
    [InlineData("\"count\": 10", "\"count\": 10, \"count\": 11", "$.study.lines[0].count", "given twice")]
    [InlineData("\"seasons\": []", "\"seasons\": {}", "$.study.areas[0].seasons", "Must be a list in [ ]")]
    [InlineData("\"seasons\": []", "\"seasons\": null", "$.study.areas[0].seasons", "Must be a list in [ ]; found null")]
    public void names_what_is_wrong_where(string old, string changed, string path, string words)
    {
        var text = SmallStudy.Text();
        var at = text.IndexOf(old, StringComparison.Ordinal);
        Assert.True(at > 0, old);
        var read = Read(text[..at] + changed + text[(at + old.Length)..]);
        Assert.Null(read.Value);
        Assert.Contains(read.Problems, p => p.Path == path && p.Message.Contains(words, StringComparison.Ordinal));
        Assert.All(read.Problems, p => Assert.True(p is { Line: > 0, Column: > 0 }));
    }

    [Fact]
    public void with_thousands_of_mistakes_names_a_hundred_and_counts_the_rest()
    {
        var study = SmallStudy.Make();
        var unknown = study with { Options = [], ChosenOption = null, Lines = [.. Enumerable.Range(0, 20_000).Select(i => study.Lines[0] with { Id = $"line-{i}", Area = "nowhere" })] };
        var read = StudyFile.Read(StudyFile.Write(unknown));
        Assert.NotNull(read.Value);
        Assert.Equal("$.study.lines[99].area", read.Problems[99].Path);
        Assert.Equal("There are 19900 more problems. Mend these first.", Assert.Single(read.Problems.Skip(100)).Message);
    }

    [Fact]
    public void of_a_culture_nobody_has_is_not_read_with_english_numbers()
    {
        var read = Read(SmallStudy.Text().Replace("\"culture\": \"en-US\"", "\"culture\": \"dee-DEE\""));
        Assert.Contains("\"dee-DEE\" is not a culture", Assert.Single(read.Problems).Message);
    }

    [Fact]
    public void reports_all_its_mistakes_together()
    {
        var read = Read(SmallStudy.Text().Replace("\"count\": 10", "\"count\": true").Replace("\"count\": 4", "\"count\": 4.5"));
        Assert.Equal(["$.study.lines[0].count", "$.study.lines[1].count"], read.Problems.Select(p => p.Path));
    }

    [Fact]
    public void from_a_newer_version_is_refused_with_what_to_do()
    {
        var problem = OnlyProblem("\"version\": 1", "\"version\": 2");
        Assert.Equal("$.version", problem.Path);
        Assert.StartsWith("This study file has version 2; this program reads versions up to 1.", problem.Message);
    }

    [Theory]
    [InlineData("", "empty")]
    [InlineData("   \n", "empty")]
    [InlineData("PK\u0003\u0004", "workbook")]
    [InlineData("hello", "not well-formed JSON")]
    [InlineData("[1]", "not a study file")]
    [InlineData("{}", "\"format\" is missing")]
    [InlineData("""{"format":"other","version":1}""", "its format is \"other\"")]
    [InlineData("""{"format":"retrofitcalc-study"}""", "\"version\" is missing")]
    [InlineData("""{"format":"retrofitcalc-study","version":1}""", "\"study\" is missing")]
    [InlineData("""{"format":"retrofitcalc-study","version":1,"study":null}""", "Must be an object")]
    public void that_is_something_else_says_so(string text, string words)
    {
        var read = Read(text);
        Assert.Null(read.Value);
        Assert.Contains(words, Assert.Single(read.Problems).Message);
    }

    [Fact]
    public void in_another_encoding_says_to_save_as_utf_8()
    {
        var latin = Encoding.Latin1.GetBytes(SmallStudy.Text().Replace("Two racks", "Zwei Gänge"));
        var problem = Assert.Single(StudyFile.Read(latin).Problems);
        Assert.Contains("UTF-8", problem.Message);
        Assert.Equal((5, 20), (problem.Line, problem.Column));
        Assert.Contains("UTF-16", Assert.Single(StudyFile.Read((byte[])[0xFF, 0xFE, .. Encoding.Unicode.GetBytes("{}")]).Problems).Message);
    }

    [Fact]
    public void never_throws_and_always_says_something_when_bytes_are_changed()
    {
        var good = StudyFile.Write(SmallStudy.Make());
        Gen.Select(Gen.Int[0, good.Length - 1], Gen.Byte).Array[1, 5].Sample(changes =>
        {
            var bytes = good.ToArray();
            foreach (var (at, value) in changes) bytes[at] = value;
            var read = StudyFile.Read(bytes);
            return read.Value is not null || read.Problems.Count > 0;
        }, iter: 3000);
    }

    [Fact]
    public void cut_off_anywhere_is_refused()
    {
        var good = StudyFile.Write(SmallStudy.Make());
        for (var length = 0; length < good.Length - 1; length += 7)
        {
            var read = StudyFile.Read(good.AsMemory(0, length));
            Assert.Null(read.Value);
            Assert.NotEmpty(read.Problems);
        }
    }

    [Fact]
    public void of_random_bytes_or_bottomless_nesting_is_refused()
    {
        Gen.Byte.Array[0, 300].Sample(bytes => StudyFile.Read(bytes).Value is null, iter: 2000);
        var deep = Read("""{"format":"retrofitcalc-study","version":1,"study":""" + new string('[', 100_000));
        Assert.Contains("not well-formed", Assert.Single(deep.Problems).Message);
    }
}
