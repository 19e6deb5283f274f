using System.Text;

namespace RetrofitCalc.Files.Surveys.Tables;

/// <summary>Tells how the bytes of a text file stand for letters.</summary>
internal static class TextEncoding
{
    private const int StartBytes = 64 * 1024;
    private static readonly Encoding Utf8 = new UTF8Encoding(false, throwOnInvalidBytes: true);
    private static readonly Encoding Little = new UnicodeEncoding(bigEndian: false, byteOrderMark: false, throwOnInvalidBytes: true);
    private static readonly Encoding Big = new UnicodeEncoding(bigEndian: true, byteOrderMark: false, throwOnInvalidBytes: true);
    private static readonly Encoding Windows1252 = CodePagesEncodingProvider.Instance.GetEncoding(1252)!;

    /// <summary>The encoding, its byte-order mark's length, and a note when it had to be guessed. No value: not a text file.</summary>
    public static (Encoding? Encoding, int Mark, string? Note) Of(ReadOnlySpan<byte> sample, bool whole)
    {
        if (sample.StartsWith<byte>([0xEF, 0xBB, 0xBF])) return (Utf8, 3, null);
        if (sample.StartsWith<byte>([0xFF, 0xFE, 0, 0])) return (null, 0, null); // UTF-32, which nobody's spreadsheet writes
        if (sample.StartsWith<byte>([0xFF, 0xFE])) return (Little, 2, null);
        if (sample.StartsWith<byte>([0xFE, 0xFF])) return (Big, 2, null);
        if (sample.Contains((byte)0)) return (ByZeros(sample), 0, null);
        if (IsUtf8(sample, whole)) return (Utf8, 0, null);
        return (Windows1252, 0, "The file is not UTF-8; it was read as Windows-1252 (Western European). Check letters with accents; to be sure, save it as UTF-8.");
    }

    private static bool IsUtf8(ReadOnlySpan<byte> sample, bool whole)
    {
        for (var cut = 0; cut <= (whole ? 0 : 3) && cut <= sample.Length; cut++)
            if (System.Text.Unicode.Utf8.IsValid(sample[..^cut])) return true;
        return false;
    }

    /// <summary>Western text in UTF-16 has a zero in every other byte; anything else with zeros is not text.</summary>
    private static Encoding? ByZeros(ReadOnlySpan<byte> sample)
    {
        int even = 0, odd = 0, half = sample.Length / 2;
        for (var i = 0; i < sample.Length; i++)
            if (sample[i] == 0 && i % 2 == 0) even++;
            else if (sample[i] == 0) odd++;
        return odd > 0.7 * half && even == 0 ? Little : even > 0.7 * half && odd == 0 ? Big : null;
    }

    /// <summary>The first part of a file as text, good enough to see its separator.</summary>
    public static string StartOf(ReadOnlySpan<byte> bytes, Encoding encoding)
    {
        var lenient = (Encoding)encoding.Clone();
        lenient.DecoderFallback = DecoderFallback.ReplacementFallback;
        return lenient.GetString(bytes[..Math.Min(bytes.Length, StartBytes)]);
    }
}
