using System.Text;

namespace RetrofitCalc.Files.Tests.Meters;

/// <summary>A text that begins and then repeats itself for ever.</summary>
internal sealed class EndlessText(string start, string repeated) : Stream
{
    private readonly byte[] _repeated = Encoding.UTF8.GetBytes(repeated);
    private byte[] _now = Encoding.UTF8.GetBytes(start);
    private int _at;

    public long Given { get; private set; }

    public override int Read(byte[] buffer, int offset, int count)
    {
        var given = 0;
        while (given < count)
        {
            if (_at == _now.Length) (_now, _at) = (_repeated, 0);
            var taken = Math.Min(count - given, _now.Length - _at);
            _now.AsSpan(_at, taken).CopyTo(buffer.AsSpan(offset + given));
            (_at, given) = (_at + taken, given + taken);
        }
        Given += given;
        return given;
    }

    public override bool CanRead => true;
    public override bool CanSeek => false;
    public override bool CanWrite => false;
    public override long Length => throw new NotSupportedException();
    public override long Position { get => throw new NotSupportedException(); set => throw new NotSupportedException(); }
    public override void Flush() { }
    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();
    public override void SetLength(long value) => throw new NotSupportedException();
    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
}
