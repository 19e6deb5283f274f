namespace RetrofitCalc.Files.Surveys.Tables;

/// <summary>Bytes already taken from a stream, then the rest of it: uploads cannot be rewound.</summary>
internal sealed class HeadAndRest(ReadOnlyMemory<byte> head, Stream rest) : ReadOnceStream
{
    private ReadOnlyMemory<byte> _head = head;

    public override int Read(Span<byte> buffer)
    {
        if (_head.IsEmpty) return rest.Read(buffer);
        var taken = Math.Min(buffer.Length, _head.Length);
        _head.Span[..taken].CopyTo(buffer);
        _head = _head[taken..];
        return taken;
    }
}
