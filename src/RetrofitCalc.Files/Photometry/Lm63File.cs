using System.Text;

namespace RetrofitCalc.Files.Photometry;

/// <summary>
/// Photometric files in the forms of IES LM-63 from 1986 to 2019. What strays from the format but has one meaning is read and noted; what has
/// none is a problem with its place.
/// </summary>
public static class Lm63File
{
    public static Parsed<PhotometricFile> Read(Stream stream)
    {
        try
        {
            var bytes = BoundedRead.All(stream, PhotometricLimits.FileBytes);
            if (bytes is null) return Parsed.Bad<PhotometricFile>($"The file is larger than {PhotometricLimits.FileMegabytes} MB; no photometric file is.");
            return bytes.Length == 0 ? Parsed.Bad<PhotometricFile>("The file is empty.") : Of(bytes);
        }
        catch (Exception unreadable) when (unreadable is IOException or DecoderFallbackException)
        {
            return Parsed.Bad<PhotometricFile>($"The file could not be read: {unreadable.Message}");
        }
    }

    private static Parsed<PhotometricFile> Of(byte[] bytes)
    {
        var notes = new List<string>();
        var text = Lm63Lines.Of(bytes, notes);
        if (text.Value is not { } lines) return new(null, text.Problems);
        var head = Lm63Head.Of(lines, notes);
        if (head.Value is null) return new(null, head.Problems);
        Lm63Remarks.OfLines(head.Value, lines, notes);
        var read = Lm63Body.Of(lines, head.Value, notes);
        return read.Value is null ? read : Parsed.Good(read.Value with { Notes = notes });
    }
}
