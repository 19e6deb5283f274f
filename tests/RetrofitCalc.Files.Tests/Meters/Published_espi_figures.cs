using System.Text.Json;
using NodaTime;
using NodaTime.Text;
using RetrofitCalc.Files.Meters;
using RetrofitCalc.Files.Meters.Espi;

namespace RetrofitCalc.Files.Tests.Meters;

/// <summary>The espi_ checks of energy_checks.json, each put into a feed and read back; the source stands in the name of each test.</summary>
public class Published_espi_figures
{
    private static readonly JsonElement[] Checks = Read();

    public static IEnumerable<TheoryDataRow<string>> Rows() => Checks.Select(check => new TheoryDataRow<string>(Text(check, "id"))
    {
        TestDisplayName = $"{Text(check, "id")} [{Text(check, "evidence")}] {Text(check, "source")}",
    });

    [Theory, MemberData(nameof(Rows))]
    public void are_read_from_a_feed(string id)
    {
        var check = Checks.Single(c => Text(c, "id") == id);
        var (expected, answer) = (check.GetProperty("expected"), Answer(Text(check, "topic"), name => check.GetProperty("inputs").GetProperty(name).GetInt64()));
        if (expected.ValueKind == JsonValueKind.String) Assert.Equal(expected.GetString(), answer);
        else Assert.Equal(expected.GetDouble(), (double)answer, check.GetProperty("tolerance").GetDouble());
    }

    private static object Answer(string topic, Func<string, long> input) => topic switch
    {
        "espi_interval_sum_kwh" => Meter(new EspiFeed
        {
            Unit = (int)input("uom"), Multiplier = (int)input("multiplier"),
            Readings = [.. Enumerable.Range(0, (int)input("readings")).Select(i => (1_563_440_400L + 3600 * i, 3600L, $"{input("value")}"))],
        }).Energy.KilowattHours,
        "espi_start_utc" => InstantPattern.General.Format(Instant.FromUnixTimeSeconds(Meter(new EspiFeed { Readings = [(input("start"), 3600, "912")] }).Readings[0].Start)),
        "espi_demand_kw" => Meter(new EspiFeed { Unit = (int)input("uom"), Multiplier = (int)input("multiplier"), Readings = [(EspiFeed.NewYear, input("interval_s"), $"{input("value")}")] }).Readings[0].Watts / 1000,
        "espi_bill_currency" => Bill($"<e:billLastPeriod>{input("billLastPeriod")}</e:billLastPeriod><e:currency>{input("currency")}</e:currency>", input("currency")).Amount!.Value.Units,
        "espi_duration_days" => Bill($"<e:billingPeriod><e:duration>{input("duration_s")}</e:duration><e:start>1563440400</e:start></e:billingPeriod>", null).Length!.Value.TotalDays,
        _ => throw new ArgumentOutOfRangeException(nameof(topic), topic, "No answer to this topic."),
    };

    private static MeterSource Meter(EspiFeed feed) => Assert.Single(feed.Read().Value!.Meters);

    private static EspiBill Bill(string parts, long? currency)
    {
        var bill = Assert.Single((new EspiFeed() with { More = EspiFeed.Entry("s", "", "", $"<e:ElectricPowerUsageSummary>{parts}</e:ElectricPowerUsageSummary>") }).Read().Value!.Bills);
        Assert.Equal(currency, bill.Currency);
        return bill;
    }

    private static string Text(JsonElement check, string field) => check.GetProperty(field).GetString()!;

    private static JsonElement[] Read()
    {
        using var file = File.OpenRead(Repository.PathOf("tests/RetrofitCalc.Engine.Tests/Reference/energy_checks.json"));
        return [.. JsonDocument.Parse(file).RootElement.GetProperty("checks").EnumerateArray().Where(c => Text(c, "topic").StartsWith("espi_", StringComparison.Ordinal)).Select(c => c.Clone())];
    }
}
