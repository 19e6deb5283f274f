using System.Diagnostics;
using System.Globalization;
using System.IO.Compression;
using System.Text;
using NodaTime;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Metering;
using RetrofitCalc.Files.Meters;
using RetrofitCalc.Files.Meters.Espi;
using RetrofitCalc.Files.Meters.Tables;

namespace RetrofitCalc.Benchmarks;

/// <summary>Reading, cleaning and laying out meter files of one and ten years of quarter-hours. All values are invented.</summary>
internal static class MeterFiles
{
    private const string Sheet = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private const string Office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private static readonly DateTimeZone Zone = DateTimeZoneProviders.Tzdb["America/New_York"];
    private static readonly CultureInfo English = CultureInfo.GetCultureInfo("en-US");

    public static void Print()
    {
        Console.WriteLine("file          years      MB   seconds   allocated MB");
        foreach (var years in (int[])[1, 10])
        {
            Show("ESPI XML", years, Espi(years), file => EspiFile.Read(file()).Value!.Meters[0]);
            Show("CSV", years, Csv(years), Table);
            Show("XLSX", years, Xlsx(years), Table);
        }
    }

    private static MeterSource Table(Func<Stream> file) => MeterTableFile.Read(file(), new("Invented", English), MeterTableFile.Look(file(), English).Value!.Guess, Zone).Value!;

    private static void Show(string kind, int years, byte[] file, Func<Func<Stream>, MeterSource> read)
    {
        var (best, allocated) = (TimeSpan.MaxValue, 0L);
        for (var run = 0; run < 5; run++)
        {
            var (watch, before) = (Stopwatch.StartNew(), GC.GetAllocatedBytesForCurrentThread());
            var cleaned = MeterCleaning.Of(read(() => new MemoryStream(file)).Readings, Zone);
            if (cleaned.Year(BillingSpans.Of(cleaned, new())[0].First, kind, Provenance.None).Watts.Contains(null)) throw new InvalidOperationException("A reading was lost.");
            allocated = GC.GetAllocatedBytesForCurrentThread() - before;
            if (watch.Elapsed < best) best = watch.Elapsed;
        }
        Console.WriteLine($"{kind,-12} {years,6} {file.Length / 1e6,7:0.0} {best.TotalSeconds,9:0.00} {allocated / 1e6,14:0}");
    }

    private static IEnumerable<ZonedDateTime> Starts(int years)
    {
        var end = Zone.AtStartOfDay(new LocalDate(2016 + years, 1, 1)).ToInstant();
        for (var at = Zone.AtStartOfDay(new LocalDate(2016, 1, 1)).ToInstant(); at < end; at += Duration.FromMinutes(15)) yield return at.InZone(Zone);
    }

    private static int WattHours(int i) => 9_000 + i * 7919 % 12_007;

    private static byte[] Espi(int years)
    {
        var text = new StringBuilder("""<feed xmlns="http://www.w3.org/2005/Atom" xmlns:e="http://naesb.org/espi"><entry><content><e:MeterReading/></content></entry>""")
            .Append("<entry><content><e:ReadingType><e:accumulationBehaviour>4</e:accumulationBehaviour><e:intervalLength>900</e:intervalLength><e:powerOfTenMultiplier>0</e:powerOfTenMultiplier><e:uom>72</e:uom></e:ReadingType></content></entry>\n");
        foreach (var day in Starts(years).Select((at, i) => (at, i)).GroupBy(reading => reading.at.Date))
        {
            text.Append("<entry><content><e:IntervalBlock>\n");
            foreach (var (at, i) in day)
                text.Append(CultureInfo.InvariantCulture, $"  <e:IntervalReading>\n    <e:timePeriod>\n      <e:duration>900</e:duration>\n      <e:start>{at.ToInstant().ToUnixTimeSeconds()}</e:start>\n    </e:timePeriod>\n    <e:value>{WattHours(i)}</e:value>\n  </e:IntervalReading>\n");
            text.Append("</e:IntervalBlock></content></entry>\n");
        }
        return Encoding.UTF8.GetBytes(text.Append("</feed>").ToString());
    }

    private static byte[] Csv(int years)
    {
        var text = new StringBuilder("Start,kWh\r\n");
        foreach (var (i, at) in Starts(years).Index())
            text.Append(CultureInfo.InvariantCulture, $"{at.LocalDateTime.ToString("MM/dd/uuuu HH:mm", CultureInfo.InvariantCulture)},{WattHours(i) / 1000.0}\r\n");
        return Encoding.UTF8.GetBytes(text.ToString());
    }

    private static byte[] Xlsx(int years)
    {
        var rows = new StringBuilder($"<worksheet xmlns=\"{Sheet}\"><sheetData><row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><is><t>Start</t></is></c><c r=\"B1\" t=\"inlineStr\"><is><t>kWh</t></is></c></row>");
        foreach (var (i, at) in Starts(years).Index())
            rows.Append(CultureInfo.InvariantCulture, $"<row r=\"{i + 2}\"><c r=\"A{i + 2}\" s=\"1\"><v>{at.LocalDateTime.ToDateTimeUnspecified().ToOADate()}</v></c><c r=\"B{i + 2}\"><v>{WattHours(i) / 1000.0}</v></c></row>");
        using var file = new MemoryStream();
        using (var zip = new ZipArchive(file, ZipArchiveMode.Create, leaveOpen: true))
        {
            Add(zip, "[Content_Types].xml", $"""<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Override PartName="/xl/workbook.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"/><Override PartName="/xl/worksheets/sheet1.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml"/><Override PartName="/xl/styles.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml"/></Types>""");
            Add(zip, "_rels/.rels", Relations(("r1", "officeDocument", "xl/workbook.xml")));
            Add(zip, "xl/workbook.xml", $"<workbook xmlns=\"{Sheet}\" xmlns:r=\"{Office}\"><sheets><sheet name=\"Readings\" sheetId=\"1\" r:id=\"r1\"/></sheets></workbook>");
            Add(zip, "xl/_rels/workbook.xml.rels", Relations(("r1", "worksheet", "worksheets/sheet1.xml"), ("r2", "styles", "styles.xml")));
            Add(zip, "xl/styles.xml", $"<styleSheet xmlns=\"{Sheet}\"><cellXfs count=\"2\"><xf numFmtId=\"0\"/><xf numFmtId=\"22\"/></cellXfs></styleSheet>");
            Add(zip, "xl/worksheets/sheet1.xml", rows.Append("</sheetData></worksheet>").ToString());
        }
        return file.ToArray();
    }

    private static string Relations(params (string Id, string Kind, string Target)[] relations) =>
        "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">" + string.Concat(relations.Select(r => $"<Relationship Id=\"{r.Id}\" Type=\"{Office}/{r.Kind}\" Target=\"{r.Target}\"/>")) + "</Relationships>";

    private static void Add(ZipArchive zip, string name, string text)
    {
        using var part = zip.CreateEntry(name, CompressionLevel.Optimal).Open();
        part.Write(Encoding.UTF8.GetBytes(text));
    }
}
