using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using RetrofitCalc.Files.Tariffs;

namespace RetrofitCalc.Files.Tests.Tariffs;

/// <summary>Invented rate records in the published form, for tests to change.</summary>
internal static class SampleRecord
{
    /// <summary>A record with the least that makes a tariff: one price at all hours.</summary>
    public static JsonObject Flat() => new() { ["name"] = "Flat", ["energyratestructure"] = Value("""[[{"rate": 0.10}]]""") };

    /// <summary>Two periods: period 2 holds on weekdays from 14 to 18 o'clock, June to September.</summary>
    public static JsonObject TimeOfUse()
    {
        var record = Flat();
        record["energyratestructure"] = Value("""[[{"rate": 0.08, "adj": 0.01}], [{"rate": 0.30}]]""");
        record["energyweekdayschedule"] = Table((month, hour) => month is >= 6 and <= 9 && hour is >= 14 and < 18 ? 1 : 0);
        record["energyweekendschedule"] = Table((_, _) => 0);
        return record;
    }

    public static JsonNode Value(string text) => JsonNode.Parse(text)!;

    public static JsonArray Months(Func<int, JsonNode> month) => [.. Enumerable.Range(1, 12).Select(month)];

    public static JsonArray Table(Func<int, int, int> place) =>
        [.. Enumerable.Range(1, 12).Select(month => (JsonNode)new JsonArray([.. Enumerable.Range(0, 24).Select(hour => (JsonNode)place(month, hour))]))];

    public static RateReading Read(JsonObject record) => Assert.Single(RateRecordFile.Read(Bytes(record)).Value!).Read();

    public static byte[] Bytes(JsonNode json) => Encoding.UTF8.GetBytes(json.ToJsonString(new JsonSerializerOptions { WriteIndented = true }));
}
