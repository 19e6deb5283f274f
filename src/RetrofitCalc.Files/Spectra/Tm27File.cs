using System.Globalization;
using System.Xml;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Spectra;

namespace RetrofitCalc.Files.Spectra;

/// <summary>Spectra in the XML of IES TM-27. Read forwards only; no document types, nothing fetched, a limit on size and samples.</summary>
public static class Tm27File
{
    private const string RootStart = "IESTM27";
    private static readonly string[] NotLight = ["absorptance", "transmittance", "reflectance", "R-Factor", "T-Factor"];
    private const int MostCharacters = 200;
    private static readonly string[] SourceFields = ["Laboratory", "ReportNumber", "ReportDate"];
    private static readonly string[] Facts = ["SpectralQuantity", "BandwidthCorrected", "Description", .. SourceFields];

    private static readonly XmlReaderSettings Settings = new()
    {
        DtdProcessing = DtdProcessing.Prohibit,
        XmlResolver = null,
        MaxCharactersInDocument = SpectrumLimits.FileBytes,
        IgnoreComments = true,
        IgnoreProcessingInstructions = true,
        IgnoreWhitespace = true,
    };

    /// <summary>Reads the spectrum.</summary>
    public static Parsed<ImportedSpectrum> Read(Stream stream)
    {
        try
        {
            using var xml = XmlReader.Create(stream, Settings);
            xml.MoveToContent();
            return xml.LocalName.StartsWith(RootStart, StringComparison.OrdinalIgnoreCase)
                ? Read(xml)
                : Parsed.Bad<ImportedSpectrum>($"This is not a TM-27 file: it begins with {CellText.Quote(xml.LocalName)}.");
        }
        catch (XmlException damaged)
        {
            return Parsed.Bad<ImportedSpectrum>(new FileProblem(damaged.LineNumber, damaged.LinePosition, "", $"This is not XML that can be read: {damaged.Message}"));
        }
        catch (Exception unreadable) when (unreadable is IOException or ArgumentException) // the framework's reader throws the second where an encoding changes in mid-file
        {
            return Parsed.Bad<ImportedSpectrum>($"The file could not be read: {unreadable.Message}");
        }
    }

    private static Parsed<ImportedSpectrum> Read(XmlReader xml)
    {
        var facts = new Dictionary<string, string>();
        var rows = new List<SpectrumRow>();
        while (!xml.EOF)
        {
            var isField = xml.NodeType == XmlNodeType.Element && xml.Depth == 2;
            if (isField && Facts.Contains(xml.LocalName))
                facts.TryAdd(xml.LocalName, Shortened(xml.ReadElementContentAsString()));
            else if (!isField || xml.LocalName != "SpectralData")
                xml.Read();
            else if (Sample(xml, out var problem) is { } row && rows.Count < SpectrumLimits.Samples)
                rows.Add(row);
            else
                return problem is null ? Parsed.Bad<ImportedSpectrum>(SpectrumLimits.TooManySamples) : Parsed.Bad<ImportedSpectrum>(problem);
        }
        return Spectrum(facts, rows);
    }

    private static SpectrumRow? Sample(XmlReader xml, out FileProblem? problem)
    {
        var place = (IXmlLineInfo)xml;
        var (line, column) = (place.LineNumber, place.LinePosition);
        var (at, value) = (xml.GetAttribute("wavelength") ?? "", xml.ReadElementContentAsString());
        var (nm, amount) = (Number(at), Number(value));
        problem = nm is null ? new(line, column, "", $"The wavelength {CellText.Quote(at)} is not a number.")
            : amount is null ? new(line, column, "", $"{CellText.Quote(value)} is not a number.")
            : null;
        return problem is null ? new(line, [nm, amount]) : null;
    }

    private static Parsed<ImportedSpectrum> Spectrum(Dictionary<string, string> facts, List<SpectrumRow> rows)
    {
        var quantity = facts.GetValueOrDefault("SpectralQuantity", "");
        if (NotLight.Contains(quantity, StringComparer.OrdinalIgnoreCase))
            return Parsed.Bad<ImportedSpectrum>($"The file holds {quantity.ToLowerInvariant()}, which is a surface or a glass, not a lamp.");
        if (rows.Count < 2) return Parsed.Bad<ImportedSpectrum>("The file has fewer than two <SpectralData> elements.");
        var isFlux = quantity.Equals("flux", StringComparison.OrdinalIgnoreCase);
        var table = new SpectrumTable(["Wavelength", "Value"], rows, [.. Notes(facts, quantity, isFlux)]);
        var choice = new SpectrumChoice(0, 1, WavelengthUnit.Nanometres, isFlux ? SpectrumUnit.WattsPerNanometre : SpectrumUnit.Relative);
        var source = string.Join(", ", SourceFields.Select(field => facts.GetValueOrDefault(field, "")).Where(text => text.Length > 0));
        var isTested = new[] { "Laboratory", "ReportNumber" }.Any(field => facts.GetValueOrDefault(field, "").Length > 0); // a date alone is no report
        var name = facts.GetValueOrDefault("Description", "") is { Length: > 0 } description ? description : "Spectrum";
        return SpectrumBuild.Of(table, choice, name, new(isTested ? EvidenceKind.Tested : EvidenceKind.Unsourced, source.Length > 0 ? $"TM-27 file: {source}" : "TM-27 file without a report"));
    }

    private static IEnumerable<string> Notes(Dictionary<string, string> facts, string quantity, bool isFlux)
    {
        if (!isFlux && !quantity.Equals("relative", StringComparison.OrdinalIgnoreCase))
            yield return quantity.Length == 0
                ? "The file does not say what its values are: the shape alone is used."
                : $"The values are {CellText.Quote(quantity)}: the shape alone is used, since what the lamp puts out cannot be told from it.";
        if (facts.GetValueOrDefault("BandwidthCorrected", "").Equals("false", StringComparison.OrdinalIgnoreCase))
            yield return "The file says that the instrument's bandwidth was not corrected: lines of a lamp are broader here than they are.";
    }

    private static double? Number(string text) =>
        double.TryParse(text.Trim(), NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number) ? number : null;

    private static string Shortened(string text) => text.Trim() is { Length: > MostCharacters } longText ? longText[..MostCharacters] : text.Trim();
}
