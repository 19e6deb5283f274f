namespace RetrofitCalc.Files;

/// <summary>Reads a stream into memory, but never more than a limit.</summary>
internal static class BoundedRead
{
    /// <summary>The whole stream; null when it is longer than the limit.</summary>
    public static byte[]? All(Stream stream, int limitBytes)
    {
        var all = UpTo(stream, limitBytes + 1);
        return all.Length > limitBytes ? null : all;
    }

    /// <summary>The first bytes of a stream.</summary>
    public static byte[] UpTo(Stream stream, int count)
    {
        using var copy = new MemoryStream();
        var buffer = new byte[81920];
        while (copy.Length < count)
        {
            var read = stream.Read(buffer, 0, (int)Math.Min(buffer.Length, count - copy.Length));
            if (read == 0) break;
            copy.Write(buffer, 0, read);
        }
        return copy.ToArray();
    }
}
