using System.Globalization;
using System.Text;
using RetrofitCalc.Files.Meters.Espi;

namespace RetrofitCalc.Files.Tests.Meters;

/// <summary>Writes small ESPI feeds with invented values; the element names are those of NAESB REQ.21 as public samples print them.</summary>
internal sealed record EspiFeed
{
    /// <summary>1 January 2026, 00:00 UTC.</summary>
    public const long NewYear = 1_767_225_600;

    public IReadOnlyList<(long Start, long Seconds, string Value)> Readings { get; init; } = [(NewYear, 900, "1200"), (NewYear + 900, 900, "1500")];
    public int Unit { get; init; } = 72;
    public int Multiplier { get; init; }
    public int Accumulation { get; init; } = 4;
    public int Flow { get; init; } = 1;
    public string Service { get; init; } = "0";
    public string Quality { get; init; } = "";
    public string More { get; init; } = "";

    private const string Head = """<feed xmlns="http://www.w3.org/2005/Atom" xmlns:e="http://naesb.org/espi"><id>urn:uuid:0</id><title>Invented</title>""";

    public string Text() => $"""
        {Head}
        {Entry("UsagePoint/01", "", "UsagePoint/01/MeterReading", $"<e:UsagePoint><e:ServiceCategory><e:kind>{Service}</e:kind></e:ServiceCategory></e:UsagePoint>")}
        {Meter("01", "07")}{Type("07")}{Intervals("01", Readings)}{More}
        </feed>
        """;

    public byte[] Bytes() => Encoding.UTF8.GetBytes(Text());

    public Parsed<EspiContent> Read() => EspiFile.Read(new MemoryStream(Bytes()));

    public static string Entry(string self, string up, string related, string content) =>
        $"""<entry><link rel="self" href="{self}"/><link rel="up" href="{up}"/><link rel="related" href="{related}"/><title/><content>{content}</content></entry>""";

    public static string Meter(string id, string type) => $"""
        <entry><link rel="self" href="UsagePoint/01/MeterReading/{id}"/><link rel="related" href="UsagePoint/01/MeterReading/{id}/IntervalBlock"/>
        <link rel="related" href="ReadingType/{type}"/><title>Meter {id}</title><content><e:MeterReading/></content></entry>
        """;

    public string Type(string id) => Entry($"ReadingType/{id}", "ReadingType", "", $"""
        <e:ReadingType><e:accumulationBehaviour>{Accumulation}</e:accumulationBehaviour><e:commodity>1</e:commodity><e:currency>840</e:currency>
        <e:flowDirection>{Flow}</e:flowDirection><e:intervalLength>900</e:intervalLength><e:kind>12</e:kind>
        <e:powerOfTenMultiplier>{Multiplier}</e:powerOfTenMultiplier><e:uom>{Unit}</e:uom></e:ReadingType>
        """);

    public string Intervals(string meter, IReadOnlyList<(long Start, long Seconds, string Value)> readings)
    {
        var text = new StringBuilder("<e:IntervalBlock><e:interval><e:duration>0</e:duration><e:start>0</e:start></e:interval>");
        foreach (var (start, seconds, value) in readings)
            text.Append(CultureInfo.InvariantCulture, $"<e:IntervalReading>{Quality}<e:timePeriod><e:duration>{seconds}</e:duration><e:start>{start}</e:start></e:timePeriod><e:value>{value}</e:value></e:IntervalReading>\n");
        return Entry($"UsagePoint/01/MeterReading/{meter}/IntervalBlock/01", $"UsagePoint/01/MeterReading/{meter}/IntervalBlock", "", text + "</e:IntervalBlock>");
    }
}
