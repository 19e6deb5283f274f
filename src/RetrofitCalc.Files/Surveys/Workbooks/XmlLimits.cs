using System.IO.Compression;
using System.Xml;

namespace RetrofitCalc.Files.Surveys.Workbooks;

/// <summary>Refuses XML that is cheap to send and costly to read: the workbook library descends once for every level, so deep nesting would end the whole program.</summary>
internal static class XmlLimits
{
    private const int Levels = 64;
    private const int ElementsAtOnce = 500_000;
    private static readonly XmlReaderSettings Settings = new() { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null };

    /// <summary>Whether a part may be read. A part that is no XML, or damaged, is left for its reader to complain about.</summary>
    public static bool Allow(ZipArchiveEntry part)
    {
        try
        {
            using var content = part.Open();
            using var xml = XmlReader.Create(content, Settings);
            return Allow(xml);
        }
        catch (XmlException)
        {
            return true;
        }
    }

    private static bool Allow(XmlReader xml)
    {
        if (xml.MoveToContent() != XmlNodeType.Element) return true;
        var readOneByOne = LevelReadOneByOne(xml.LocalName);
        var elements = 0;
        while (xml.Read())
        {
            if (xml.NodeType != XmlNodeType.Element) continue;
            elements = xml.Depth <= readOneByOne ? 0 : elements + 1;
            if (xml.Depth > Levels || elements > ElementsAtOnce) return false;
        }
        return true;
    }

    /// <summary>Cells of a sheet and shared texts are read one by one; every other part is held in memory as a whole.</summary>
    private static int LevelReadOneByOne(string root) => root switch { "worksheet" => 3, "sst" => 1, _ => 0 };
}
