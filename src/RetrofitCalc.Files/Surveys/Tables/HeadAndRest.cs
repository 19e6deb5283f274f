namespace RetrofitCalc.Files.Surveys.Tables;

/// <summary>Bytes already taken from a stream, then the rest of it: uploads cannot be rewound.</summary>
internal sealed class HeadAndRest(ReadOnlyMemory<byte> head, Stream rest) : Stream
{
    private ReadOnlyMemory<byte> _head = head;

    public override int Read(byte[] buffer, int offset, int count)
    {
        if (_head.IsEmpty) return rest.Read(buffer, offset, count);
        var taken = Math.Min(count, _head.Length);
        _head.Span[..taken].CopyTo(buffer.AsSpan(offset));
        _head = _head[taken..];
        return taken;
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
