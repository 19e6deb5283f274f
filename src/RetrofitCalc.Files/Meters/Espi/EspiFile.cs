using System.Xml;
using NodaTime;

namespace RetrofitCalc.Files.Meters.Espi;

/// <summary>
/// Reads interval data in ESPI XML (NAESB REQ.21, an Atom feed). The file is read as a stream; external entities and document types are
/// refused, as no meter file has them.
/// </summary>
public static class EspiFile
{
    private static readonly XmlReaderSettings Settings = new()
    {
        DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null, IgnoreComments = true, IgnoreProcessingInstructions = true, IgnoreWhitespace = true,
    };

    public static Parsed<EspiContent> Read(Stream stream)
    {
        try
        {
            using var limited = new LimitedStream(stream, MeterLimits.FileBytes);
            using var xml = XmlReader.Create(limited, Settings);
            var scanner = new EspiScanner(xml);
            return scanner.Scan() is { } refusal ? Parsed.Bad<EspiContent>(refusal) : ContentOf(scanner);
        }
        catch (LimitedStream.BeyondLimitException)
        {
            return Parsed.Bad<EspiContent>(MeterLimits.TooLarge);
        }
        catch (XmlException broken)
        {
            return Parsed.Bad<EspiContent>(new FileProblem(broken.LineNumber, broken.LinePosition, "", $"This is not well-formed XML, or it has a document type, which no meter file needs. Nothing was read. {FirstSentence(broken.Message)}"));
        }
        catch (Exception unreadable) when (unreadable is IOException or System.Text.DecoderFallbackException or ArgumentException)
        {
            return Parsed.Bad<EspiContent>($"The file could not be read: {unreadable.Message}");
        }
    }

    private static Parsed<EspiContent> ContentOf(EspiScanner scanner)
    {
        if (!scanner.FoundEspi) return Parsed.Bad<EspiContent>("This XML file is not an ESPI file: nothing in it belongs to http://naesb.org/espi.");
        var meters = EspiMeters.Of(scanner.Entries);
        if (meters is null) return Parsed.Bad<EspiContent>("The file holds more meters than anyone could choose from. Nothing was read. Export one site at a time.");
        var offset = scanner.OffsetSeconds is { } seconds and >= -64_800 and <= 64_800 ? Offset.FromSeconds((int)seconds) : (Offset?)null;
        var content = new EspiContent(meters, [.. scanner.Bills.Select(bill => bill.Bill)], offset);
        return meters.Count > 0
            ? Parsed.Good(content)
            : new(content, [FileProblem.Of("The file holds no interval readings. Ask the utility for interval data, not for bills only.")]);
    }

    private static string FirstSentence(string message) => message.IndexOf(" Line ", StringComparison.Ordinal) is var end and > 0 ? message[..end] : message;
}
