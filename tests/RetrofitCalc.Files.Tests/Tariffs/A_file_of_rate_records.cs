using System.Text;
using System.Text.Json.Nodes;
using RetrofitCalc.Files.Tariffs;
using static RetrofitCalc.Files.Tests.Tariffs.SampleRecord;

namespace RetrofitCalc.Files.Tests.Tariffs;

public class A_file_of_rate_records
{
    [Fact]
    public void holds_one_record_a_list_or_the_items_of_an_answer()
    {
        JsonObject Named(string name) => new() { ["name"] = name, ["utility"] = "Quillmere Light", ["energyratestructure"] = Value("[[{\"rate\": 0.1}]]") };
        Assert.Equal([("A", "$")], Listed(Named("A")));
        Assert.Equal([("A", "$[0]"), ("B", "$[1]")], Listed(new JsonArray(Named("A"), Named("B"))));
        Assert.Equal([("A", "$.items[0]"), ("B", "$.items[1]")], Listed(new JsonObject { ["errors"] = new JsonArray(), ["items"] = new JsonArray(Named("A"), Named("B")), ["more"] = 1 }));
    }

    [Fact]
    public void reads_only_the_record_that_is_chosen()
    {
        var file = new JsonArray(new JsonObject { ["name"] = "Broken", ["energyratestructure"] = 5 }, Flat());
        var records = RateRecordFile.Read(Bytes(file)).Value!;
        Assert.Equal("\"energyratestructure\" must be a list in [ ].", Assert.Single(records[0].Read().Tariff.Problems).Message);
        Assert.Equal("Flat", records[1].Read().Tariff.Value!.Name);
    }

    [Theory]
    [InlineData("{\n  \"name\": \"A\",\n  \"x\": }", 3, "not well-formed JSON")]
    [InlineData("[\n  {\"name\": \"A\"},\n  7\n]", 3, "must be an object")]
    [InlineData("{\"name\": \"A\"}\n}", 2, "not well-formed JSON")]
    [InlineData("{\"a\":[[[[[[[[[[[[[[[[[[1]]]]]]]]]]]]]]]]]]}", 1, "not well-formed JSON")]
    [InlineData("{\n\"name\": \"\\ud800\"}", 2, "half of a character")]
    public void names_line_and_column_of_what_is_broken(string text, int line, string words)
    {
        var problem = Assert.Single(RateRecordFile.Read(Encoding.UTF8.GetBytes(text)).Problems);
        Assert.Equal(line, problem.Line);
        Assert.True(problem.Column > 0);
        Assert.Contains(words, problem.Message);
    }

    [Theory, InlineData("", "empty"), InlineData("[]", "no rate record"), InlineData("3", "must be an object"), InlineData("PK\u0003", "workbook")]
    public void says_when_it_is_something_else(string text, string words) =>
        Assert.Contains(words, Assert.Single(RateRecordFile.Read(Encoding.UTF8.GetBytes(text)).Problems).Message);

    [Fact]
    public void is_refused_past_its_limits()
    {
        var many = $"[{string.Join(',', Enumerable.Repeat("{}", RateRecordFile.MostRecords + 1))}]";
        Assert.Contains("more than 5000 records", Assert.Single(RateRecordFile.Read(Encoding.UTF8.GetBytes(many)).Problems).Message);
        using var long_ = new MemoryStream(new byte[RateRecordFile.LimitMegabytes * 1024 * 1024 + 1]);
        Assert.Contains("larger than 32 MB", Assert.Single(RateRecordFile.Read(long_).Problems).Message);
    }

    private static IEnumerable<(string Name, string Path)> Listed(JsonNode file) =>
        RateRecordFile.Read(Bytes(file)).Value!.Select(record => (record.Name, record.Path));
}
