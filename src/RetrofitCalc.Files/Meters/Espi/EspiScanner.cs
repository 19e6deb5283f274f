using System.Globalization;
using System.Xml;

namespace RetrofitCalc.Files.Meters.Espi;

/// <summary>Walks through the XML once, entry by entry. Names count whatever their case: files in the wild misspell them.</summary>
internal sealed class EspiScanner(XmlReader xml)
{
    private const int LongestText = 200;
    private static readonly string[] Namespaces = ["http://www.w3.org/2005/Atom", "http://naesb.org/espi"];
    private readonly List<string> _open = [];
    private readonly char[] _text = new char[LongestText];
    private EspiEntry _entry = new();
    private EspiBillParts? _bill;
    private (long? Start, long? Seconds, long? Value, int Quality, int Line) _reading;
    private int _readings;

    public List<EspiEntry> Entries { get; } = [];
    public List<EspiBillParts> Bills { get; } = [];
    public long? OffsetSeconds { get; private set; }
    public bool FoundEspi { get; private set; }

    /// <summary>Why the file is refused; null when all of it was read.</summary>
    public string? Scan()
    {
        Entries.Add(_entry);
        while (xml.Read())
        {
            if (xml.NodeType == XmlNodeType.Element) Open();
            else if (xml.NodeType is XmlNodeType.Text or XmlNodeType.CDATA) Take();
            else if (xml.NodeType == XmlNodeType.EndElement) Close();
            if (_open.Count > MeterLimits.XmlLevels) return "The file nests its elements deeper than any meter file. Nothing was read.";
            if (_readings > MeterLimits.Readings) return MeterLimits.TooManyReadings;
            if (Entries.Count > MeterLimits.Entries || Bills.Count > MeterLimits.Entries) return "The file has more entries than can be read at once. Nothing was read. Export fewer years at a time.";
        }
        return null;
    }

    private void Open()
    {
        var name = Namespaces.Contains(xml.NamespaceURI) ? xml.LocalName.ToLowerInvariant() : "";
        FoundEspi |= name.Length > 0 && xml.NamespaceURI == Namespaces[1];
        _open.Add(name);
        if (name == "entry") Entries.Add(_entry = new());
        else if (name == "link") _entry.Link(xml.GetAttribute("rel"), xml.GetAttribute("href"));
        else if (name == "meterreading") _entry.IsMeter = true;
        else if (name == "readingtype") _entry.Type ??= new();
        else if (name == "intervalreading") _reading = (null, null, null, 0, ((IXmlLineInfo)xml).LineNumber);
        else if (name is "usagesummary" or "electricpowerusagesummary") Bills.Add(_bill = new());
        if (xml.IsEmptyElement) Close();
    }

    private void Close()
    {
        var name = _open[^1];
        _open.RemoveAt(_open.Count - 1);
        if (name != "intervalreading") return;
        _entry.Readings.Add(new(_reading.Start, _reading.Seconds, _reading.Value, _reading.Quality, _reading.Line));
        _readings++;
    }

    private string Above(int levels) => _open.Count > levels ? _open[^(levels + 1)] : "";

    private void Take()
    {
        var (leaf, parent, grand) = (Above(0), Above(1), Above(2));
        if (leaf.Length == 0) return;
        var length = xml.ReadValueChunk(_text, 0, LongestText);
        var text = new string(_text, 0, length).Trim();
        if (parent == "intervalreading" && leaf == "value") _reading.Value = Whole(text);
        else if (parent == "timeperiod" && grand == "intervalreading") SetPeriod(leaf, text);
        else if (parent == "readingquality" && leaf == "quality") _reading.Quality = (int)(Whole(text) ?? 0);
        else if (parent == "readingtype") _entry.Type?.Set(leaf, text); // none when an entry stands within it
        else if (parent == "servicecategory" && leaf == "kind") _entry.ServiceKind = text;
        else if (parent == "localtimeparameters" && leaf == "tzoffset") OffsetSeconds = Whole(text);
        else if (parent == "entry" && leaf == "title") _entry.Title = text;
        else if (parent is "usagesummary" or "electricpowerusagesummary" or "billingperiod") _bill?.Set(parent, leaf, Whole(text));
    }

    private void SetPeriod(string leaf, string text)
    {
        if (leaf == "start") _reading.Start = Whole(text);
        else if (leaf == "duration") _reading.Seconds = Whole(text);
    }

    private static long? Whole(string text) => long.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number) ? number : null;
}
