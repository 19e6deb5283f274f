namespace RetrofitCalc.Files.Meters;

/// <summary>Passes a stream on, but never more than a limit.</summary>
internal sealed class LimitedStream(Stream inner, long limit) : Stream
{
    private long _read;

    /// <summary>The stream goes on beyond its limit.</summary>
    internal sealed class BeyondLimitException : IOException;

    public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

    public override int Read(Span<byte> buffer)
    {
        var read = inner.Read(buffer);
        _read += read;
        return _read <= limit ? read : throw new BeyondLimitException();
    }

    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => false;

    public override long Length => throw new NotSupportedException();

    public override long Position { get => throw new NotSupportedException(); set => throw new NotSupportedException(); }

    public override void Flush()
    {
    }

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
}
