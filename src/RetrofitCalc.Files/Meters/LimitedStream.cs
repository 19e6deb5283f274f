namespace RetrofitCalc.Files.Meters;

/// <summary>Passes a stream on, but never more than a limit.</summary>
internal sealed class LimitedStream(Stream inner, long limit) : ReadOnceStream
{
    private long _read;

    /// <summary>The stream goes on beyond its limit.</summary>
    internal sealed class BeyondLimitException : IOException;

    public override int Read(Span<byte> buffer)
    {
        var read = inner.Read(buffer);
        _read += read;
        return _read <= limit ? read : throw new BeyondLimitException();
    }
}
