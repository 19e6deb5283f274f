using System.IO.Compression;
using System.Text;

namespace RetrofitCalc.Files.Tests.Surveys;

/// <summary>Makes XLSX files by hand, so that the reader is tried on what others write and not on what our own library would.</summary>
internal static class Workbooks
{
    private const string Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private const string Relations = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

    /// <summary>A workbook with one sheet, given its sheetData and what follows.</summary>
    public static byte[] OneSheet(string sheetData, string after = "", string shared = "", string workbookExtra = "") => Make(new Dictionary<string, string>
    {
        ["xl/worksheets/sheet1.xml"] = $"<worksheet xmlns=\"{Main}\"><sheetData>{sheetData}</sheetData>{after}</worksheet>",
        ["xl/sharedStrings.xml"] = $"<sst xmlns=\"{Main}\">{shared}</sst>",
    }, "<sheet name=\"Survey\" sheetId=\"1\" r:id=\"rId1\"/>", workbookExtra);

    public static byte[] TwoSheets(string first, string second) => Make(new Dictionary<string, string>
    {
        ["xl/worksheets/sheet1.xml"] = $"<worksheet xmlns=\"{Main}\"><sheetData>{first}</sheetData></worksheet>",
        ["xl/worksheets/sheet2.xml"] = $"<worksheet xmlns=\"{Main}\"><sheetData>{second}</sheetData></worksheet>",
        ["xl/sharedStrings.xml"] = $"<sst xmlns=\"{Main}\"/>",
    }, "<sheet name=\"Rooms\" sheetId=\"1\" r:id=\"rId1\"/><sheet name=\"Hall\" sheetId=\"2\" r:id=\"rId2\"/>", "");

    public static byte[] Make(Dictionary<string, string> parts, string sheets, string workbookExtra)
    {
        using var file = new MemoryStream();
        using (var zip = new ZipArchive(file, ZipArchiveMode.Create, leaveOpen: true))
        {
            Add(zip, "[Content_Types].xml", ContentTypes);
            Add(zip, "_rels/.rels", $"<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\"><Relationship Id=\"r1\" Type=\"{Relations}/officeDocument\" Target=\"xl/workbook.xml\"/></Relationships>");
            Add(zip, "xl/workbook.xml", $"<workbook xmlns=\"{Main}\" xmlns:r=\"{Relations}\">{workbookExtra}<sheets>{sheets}</sheets></workbook>");
            Add(zip, "xl/_rels/workbook.xml.rels", $"""
                <Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">
                <Relationship Id="rId1" Type="{Relations}/worksheet" Target="worksheets/sheet1.xml"/>
                <Relationship Id="rId2" Type="{Relations}/worksheet" Target="worksheets/sheet2.xml"/>
                <Relationship Id="rId3" Type="{Relations}/sharedStrings" Target="sharedStrings.xml"/>
                <Relationship Id="rId4" Type="{Relations}/styles" Target="styles.xml"/></Relationships>
                """);
            Add(zip, "xl/styles.xml", $"""
                <styleSheet xmlns="{Main}"><numFmts count="2"><numFmt numFmtId="164" formatCode="d/m/yyyy"/><numFmt numFmtId="165" formatCode="0.00 &quot;yd&quot;"/></numFmts>
                <cellXfs count="4"><xf numFmtId="0"/><xf numFmtId="14"/><xf numFmtId="164"/><xf numFmtId="165"/></cellXfs></styleSheet>
                """);
            parts.TryAdd("xl/worksheets/sheet2.xml", $"<worksheet xmlns=\"{Main}\"><sheetData/></worksheet>");
            foreach (var (name, text) in parts) Add(zip, name, text);
        }
        return file.ToArray();
    }

    /// <summary>The same workbook with another text in one part.</summary>
    public static byte[] Replace(byte[] workbook, string part, string text)
    {
        using var file = new MemoryStream();
        file.Write(workbook);
        using (var zip = new ZipArchive(file, ZipArchiveMode.Update, leaveOpen: true))
        {
            zip.GetEntry(part)!.Delete();
            Add(zip, part, text);
        }
        return file.ToArray();
    }

    public static void Add(ZipArchive zip, string name, string text)
    {
        using var part = zip.CreateEntry(name, CompressionLevel.Optimal).Open();
        part.Write(Encoding.UTF8.GetBytes(text));
    }

    private const string ContentTypes = """
        <Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">
        <Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>
        <Default Extension="xml" ContentType="application/xml"/>
        <Override PartName="/xl/workbook.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"/>
        <Override PartName="/xl/worksheets/sheet1.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml"/>
        <Override PartName="/xl/worksheets/sheet2.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml"/>
        <Override PartName="/xl/sharedStrings.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sharedStrings+xml"/>
        <Override PartName="/xl/styles.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml"/>
        </Types>
        """;
}
