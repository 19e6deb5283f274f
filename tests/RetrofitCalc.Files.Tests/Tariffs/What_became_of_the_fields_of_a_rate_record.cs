using System.Text;
using System.Text.Json.Nodes;
using CsCheck;
using RetrofitCalc.Files.Tariffs;
using static RetrofitCalc.Files.Tests.Tariffs.SampleRecord;

namespace RetrofitCalc.Files.Tests.Tariffs;

public class What_became_of_the_fields_of_a_rate_record
{
    [Fact]
    public void is_told_for_each_field_in_the_order_of_the_file()
    {
        var record = TimeOfUse();
        foreach (var other in new[] { "sector", "usenetmetering", "coincidentratestructure", "peakkwcapacitymax", "eiaid", "brandnewfield" })
            record[other] = "x";
        var fields = Read(record).Fields;
        Assert.Equal(record.Select(field => $"$.{field.Key}"), fields.Where(field => field.Path.LastIndexOf('.') == 1 && !field.Path.Contains('[')).Select(field => field.Path));
    }

    [Theory]
    [InlineData("usenetmetering", "fed into the grid")]
    [InlineData("coincidentratestructure", "utility's own peak")]
    [InlineData("peakkwcapacitymax", "Who may take")]
    [InlineData("brandnewfield", "does not know")]
    [InlineData("energyattrs", "tariff sheet")]
    public void says_why_it_is_not_used(string field, string reason)
    {
        var record = Flat();
        record[field] = true;
        var note = Assert.Single(Read(record).With(FieldUse.NotUsed));
        Assert.Equal($"$.{field}", note.Path);
        Assert.Contains(reason, note.Note);
    }

    [Fact]
    public void names_what_a_sell_price_was_for_and_quotes_comments()
    {
        var record = Flat();
        record["energyratestructure"] = Value("""[[{"rate": 0.1, "sell": 0.03}]]""");
        record["energycomments"] = "A 3 % franchise fee applies.";
        var unused = Read(record).With(FieldUse.NotUsed).ToDictionary(field => field.Path, field => field.Note);
        Assert.Contains("fed into the grid", unused["$.energyratestructure[0][0].sell"]);
        Assert.Contains("franchise fee", unused["$.energycomments"]);
    }

    [Theory, InlineData("Bundled", FieldUse.Used), InlineData("Delivery", FieldUse.Doubtful)]
    public void warns_of_a_rate_that_is_a_part_of_the_bill(string service, FieldUse use)
    {
        var record = Flat();
        record["servicetype"] = service;
        Assert.Contains(Read(record).With(use), field => field.Path == "$.servicetype");
    }

    [Fact]
    public void gives_line_and_column_in_the_file()
    {
        var file = "{ \"items\": [\n  { \"name\": \"A\",\n    \"sector\": \"Commercial\",\n    \"energyratestructure\": [[{ \"rate\": 0.1 }]] } ] }";
        var sector = RateRecordFile.Read(Encoding.UTF8.GetBytes(file)).Value![0].Read().Fields.Single(field => field.Path.EndsWith("sector", StringComparison.Ordinal));
        Assert.Equal((3, 15, "$.items[0].sector"), (sector.Line, sector.Column, sector.Path));
    }

    [Theory]
    [InlineData("""{"energyratestructure": [[{"rate": 0.1, "max": 5, "unit": "kWh/kW daily"}, {"rate": 1}]]}""", "kWh/kW daily")]
    [InlineData("""{"energyratestructure": [[{"rate": 0.1, "max": 5, "unit": "kWh/kW"}, {"rate": 0.1, "max": 9, "unit": "kWh"}, {"rate": 1}]]}""", "mixes")]
    [InlineData("""{"energyratestructure": [[{"rate": 0.1, "max": 5}, {"rate": 0.1, "max": 4}, {"rate": 1}]]}""", "end above")]
    [InlineData("""{"energyratestructure": [[{"rate": 0.1}, {"rate": 1}]]}""", "no \"max\"")]
    [InlineData("""{"energyratestructure": [[{"rate": "ten"}]]}""", "must be a number")]
    [InlineData("""{"energyratestructure": [[{"rate": 1e999}]]}""", "must be a number")]
    [InlineData("""{"energyratestructure": [[]]}""", "no tier")]
    [InlineData("""{"energyratestructure": [[{"rate": 0.1}], [{"rate": 0.2}]]}""", "needs \"energyweekdayschedule\"")]
    [InlineData("""{"energyratestructure": [[{"rate": 0.1}]], "energyweekdayschedule": [[0]], "energyweekendschedule": [[0]]}""", "12 items")]
    [InlineData("""{"energyratestructure": [[{"rate": 0.1}]], "flatdemandstructure": [[{"rate": 5}]], "flatdemandunit": "kW daily"}""", "kW daily")]
    [InlineData("""{"energyratestructure": [[{"rate": 0.1}]], "flatdemandstructure": [[{"rate": 5}]], "flatdemandmonths": [0,0,0,0,0,0,0,0,0,0,0,1]}""", "from 0 to 0")]
    [InlineData("""{"energyratestructure": [[{"rate": 0.1}]], "fixedchargefirstmeter": 5, "fixedchargeunits": "$/week"}""", "$/week")]
    [InlineData("""{"energyratestructure": [[{"rate": 0.1}]], "flatdemandstructure": [[{"rate": -5}]]}""", "below zero")]
    [InlineData("""{"name": "No prices"}""", "no price")]
    public void refuses_what_it_cannot_bill_and_says_where(string record, string reason)
    {
        var reading = Assert.Single(RateRecordFile.Read(Encoding.UTF8.GetBytes(record)).Value!).Read();
        Assert.Null(reading.Tariff.Value);
        Assert.Contains(reading.Tariff.Problems, problem => problem.Line == 1 && problem.Column > 0 && problem.Message.Contains(reason, StringComparison.Ordinal));
    }

    // A hundred thousand fields nobody knows on one line: counted, not listed, and in a moment.
    [Fact]
    public void stays_short_for_a_record_with_no_end_of_fields()
    {
        var record = Flat();
        for (var i = 0; i < 100_000; i++)
            record[$"f{i}"] = i;
        var reading = RateRecordFile.Read(Encoding.UTF8.GetBytes(record.ToJsonString())).Value![0].Read();
        Assert.InRange(reading.Fields.Count, 2, 2001);
        Assert.Contains("more fields", reading.With(FieldUse.Doubtful).Single().Note);
        Assert.NotNull(reading.Tariff.Value);
    }

    [Fact]
    public void refuses_lists_longer_than_a_tariff_can_be()
    {
        var record = Flat();
        record["energyratestructure"] = new JsonArray(new JsonArray([.. Enumerable.Range(0, 101).Select(_ => (JsonNode)new JsonObject())]));
        Assert.Contains("at most 100", Assert.Single(Read(record).Tariff.Problems).Message);
    }

    // Any byte of a good record changed, left out or doubled: an answer in words, never an exception, and never a field without a place.
    [Fact]
    public void never_breaks_on_a_damaged_record()
    {
        var good = Bytes(Full());
        Gen.Select(Gen.Int[0, good.Length - 1], Gen.Byte, Gen.Int[0, 2], Gen.Int[1, 40]).Array[1, 4].Sample(damages =>
        {
            var bytes = damages.Aggregate(good.ToList(), (text, d) => Damaged(text, Math.Min(d.Item1, text.Count - 1), d.Item2, (d.Item3, d.Item4)));
            AssertAnswered(bytes.ToArray());
        }, iter: 3000);
    }

    // Any value in it replaced by one of another kind or size, which stays well-formed and reaches deeper.
    [Fact]
    public void never_breaks_on_values_that_make_no_sense()
    {
        string[] odd = ["null", "true", "-1", "0", "1e300", "1e-300", "\"\"", "\"text\"", "[]", "{}", "[[]]", "[[{}]]", "[1]", "[null]", "13", "0.5", "\"NaN\""];
        Gen.Select(Gen.Int[0, 10_000], Gen.Int[0, odd.Length - 1]).Array[1, 3].Sample(changes =>
        {
            var record = Full();
            foreach (var (place, value) in changes)
            {
                var nodes = Below(record).ToList();
                nodes[place % nodes.Count].ReplaceWith(JsonNode.Parse(odd[value]));
            }
            AssertAnswered(Bytes(record));
        }, iter: 3000);
    }

    private static IEnumerable<JsonNode> Below(JsonNode node) => (node switch
    {
        JsonObject fields => fields.Select(field => field.Value),
        JsonArray items => items,
        _ => [],
    }).OfType<JsonNode>().SelectMany(child => Below(child).Prepend(child));

    private static void AssertAnswered(byte[] text)
    {
        var file = RateRecordFile.Read(text);
        Assert.True(file.Value is null == file.Problems.Count > 0);
        foreach (var reading in (file.Value ?? []).Select(record => record.Read()))
        {
            Assert.True(reading.Tariff.Value is not null || reading.Tariff.Problems.Count > 0);
            Assert.All(reading.Fields, field => Assert.True(field.Line > 0 && field.Column > 0));
        }
    }

    private static List<byte> Damaged(List<byte> text, int at, byte value, (int Kind, int Count) damage)
    {
        if (damage.Kind == 0)
            text[at] = value;
        else if (damage.Kind == 1)
            text.RemoveRange(at, Math.Min(damage.Count, text.Count - at - 1));
        else
            text.InsertRange(at, text.GetRange(at, Math.Min(damage.Count, text.Count - at)));
        return text;
    }

    private static JsonObject Full()
    {
        var record = TimeOfUse();
        record["flatdemandstructure"] = Value("""[[{"rate": 5, "max": 10}, {"rate": 4}]]""");
        record["demandratchetpercentage"] = Months(_ => 0.5);
        record["fixedchargefirstmeter"] = 12;
        record["startdate"] = 1388559600;
        record["flatdemandmonths"] = Months(_ => 0);
        record["demandratestructure"] = Value("""[[{"rate": 0}], [{"rate": 12}]]""");
        record["demandweekdayschedule"] = Table((month, hour) => month == 7 && hour == 15 ? 1 : 0);
        record["demandweekendschedule"] = Table((_, _) => 0);
        record["demandwindow"] = 30;
        record["demandreactivepowercharge"] = 2.7;
        record["lookbackpercent"] = 0;
        record["mincharge"] = 20;
        record["minchargeunits"] = "$/month";
        record["fueladjustmentsmonthly"] = Months(month => 0.01 * month);
        record["description"] = "Text with \"quotes\" and \\u00e9";
        return record;
    }
}
