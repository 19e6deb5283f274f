using System.Text;
using RetrofitCalc.Files.Surveys.Tables;

namespace RetrofitCalc.Files.Photometry;

/// <summary>The lines of a file, however they end.</summary>
internal static class Lm63Lines
{
    public static Parsed<string[]> Of(byte[] bytes, List<string> notes)
    {
        var (encoding, mark, _) = TextEncoding.Of(bytes, whole: true);
        if (encoding is null) return Parsed.Bad<string[]>("This is not a text file. A photometric file in the form of IES LM-63 is plain text.");
        var text = encoding.GetString(bytes.AsSpan(mark)).Replace('\x1a', ' '); // an old end-of-file mark
        if (!Ascii.IsValid(text)) notes.Add("The file has letters beyond plain ASCII, which the format does not have. Check them in the labels.");
        if (text.Contains('\r') && !text.Contains('\n')) notes.Add("Lines end with a carriage return alone.");
        return Parsed.Good(text.Replace("\r\n", "\n").Replace('\r', '\n').Split('\n'));
    }
}
