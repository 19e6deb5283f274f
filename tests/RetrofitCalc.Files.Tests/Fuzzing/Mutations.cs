using System.Text;

namespace RetrofitCalc.Files.Tests.Fuzzing;

/// <summary>Spoils bytes in the ways files get spoilt, and in the ways people spoil them on purpose. The same seed spoils the same way.</summary>
internal sealed class Mutations(int seed)
{
    private static readonly string[] Numbers =
        ["1e999", "-1e999", "NaN", "-0", "99999999999999999999999999", "-2147483649", "9223372036854775808", "0.0000000000000000000000000001", "1e-400", "0x7f", "٣", "", new('9', 400)];

    private static readonly string[] Pieces =
        ["[", "{\"a\":", "<a>", "</a>", "<![CDATA[", "]]>", "&#0;", "&a;", "\"", "\"\"", ",", ";", "\n", "\r", "\t", "\0", "\uFEFF", "\uFFFF", "null", "true", "=1+1", "-->", "<!--", "24:00", "2026-02-30", "1969-12-31", "9999-12-31"];

    private const string Bomb = "<!DOCTYPE a [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b \"&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;\"><!ENTITY c \"&b;&b;&b;&b;&b;&b;&b;&b;&b;&b;\">]>";

    private readonly Random _random = new(seed);

    public int Next(int below) => _random.Next(below);

    public byte[] Of(byte[] good, byte[] other)
    {
        var bytes = good;
        for (var times = 1 + Next(4); times > 0; times--) bytes = Once(bytes, other);
        return bytes;
    }

    private byte[] Once(byte[] bytes, byte[] other)
    {
        var (from, to) = Range(bytes.Length);
        return Next(11) switch
        {
            0 => Flipped(bytes),
            1 => [.. bytes[..from], .. bytes[to..]],
            2 => bytes[..from],
            3 => [.. bytes[..to], .. Repeated(bytes[from..to], 1 + Next(40)), .. bytes[to..]],
            4 => [.. bytes[..from], .. Encoding.UTF8.GetBytes(Pieces[Next(Pieces.Length)]), .. bytes[from..]],
            5 => [.. bytes[..from], .. Repeated(Encoding.UTF8.GetBytes(Pieces[Next(Pieces.Length)]), Next(3000)), .. bytes[from..]],
            6 => OtherNumber(bytes),
            7 => [.. bytes[..from], .. other[Range(other.Length).From..]],
            8 => [.. Encoding.UTF8.GetBytes(Bomb), .. bytes],
            9 => Swapped(bytes),
            _ => [.. bytes[..from], .. Noise(1 + Next(20)), .. bytes[to..]],
        };
    }

    private (int From, int To) Range(int length)
    {
        var from = Next(length + 1);
        return (from, Math.Min(length, from + Next(Next(4) == 0 ? length + 1 : 60)));
    }

    private byte[] Noise(int count)
    {
        var noise = new byte[count];
        _random.NextBytes(noise);
        return noise;
    }

    private byte[] Flipped(byte[] bytes)
    {
        var flipped = bytes.ToArray();
        for (var times = 1 + Next(8); times > 0 && flipped.Length > 0; times--) flipped[Next(flipped.Length)] ^= (byte)(1 << Next(8));
        return flipped;
    }

    private static byte[] Repeated(byte[] piece, int times) =>
        piece.Length * (long)times > 100_000 ? piece : [.. Enumerable.Repeat(piece, times).SelectMany(b => b)];

    private byte[] OtherNumber(byte[] bytes)
    {
        var digit = bytes.AsSpan(Next(bytes.Length + 1)).IndexOfAnyInRange((byte)'0', (byte)'9');
        if (digit < 0) return bytes;
        var end = digit;
        while (end < bytes.Length && bytes[end] is >= (byte)'0' and <= (byte)'9') end++;
        return [.. bytes[..digit], .. Encoding.UTF8.GetBytes(Numbers[Next(Numbers.Length)]), .. bytes[end..]];
    }

    private byte[] Swapped(byte[] bytes)
    {
        var lines = Encoding.Latin1.GetString(bytes).Split('\n');
        var (one, two) = (Next(lines.Length), Next(lines.Length));
        (lines[one], lines[two]) = (lines[two], lines[one]);
        return Encoding.Latin1.GetBytes(string.Join('\n', lines));
    }
}
