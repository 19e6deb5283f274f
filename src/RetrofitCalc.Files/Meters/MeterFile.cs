namespace RetrofitCalc.Files.Meters;

/// <summary>Tells kinds of meter file apart by their first bytes, not by their names.</summary>
public static class MeterFile
{
    /// <summary>Bytes to look at.</summary>
    public const int StartBytes = 64;

    /// <summary>Whether a file is XML and so to be read by <see cref="Espi.EspiFile"/>; a table otherwise, to be read by <see cref="Tables.MeterTableFile"/>.</summary>
    /// <param name="start">The first bytes of the file.</param>
    public static bool IsXml(ReadOnlySpan<byte> start)
    {
        foreach (var letter in start)
        {
            if (letter == '<') return true;
            // Byte-order marks, the zeros of UTF-16 and blanks may stand before it.
            if (letter is not (0xEF or 0xBB or 0xBF or 0xFF or 0xFE or 0 or (byte)' ' or (byte)'\t' or (byte)'\r' or (byte)'\n')) return false;
        }
        return false;
    }
}
