using System.Text;

namespace RetrofitCalc.Files.Weather;

/// <summary>Reads a text line by line and holds one line at a time; a line or a file beyond the limits ends the reading.</summary>
internal sealed class EpwLines(Stream stream)
{
    private const int LongestLine = 20_000;
    private const int MostLines = 10_000;
    private const int MostLetters = EpwFile.LimitMegabytes * 1024 * 1024;

    // Every byte is a letter in this encoding, so no file fails here; names are decoded again where they matter.
    private readonly StreamReader _reader = new(stream, Encoding.Latin1, detectEncodingFromByteOrderMarks: false);
    private readonly StringBuilder _line = new();
    private int _letters;

    /// <summary>Number of the line read last, from 1.</summary>
    public int Number { get; private set; }

    /// <summary>Why reading ended before the file did; null while it has not.</summary>
    public FileProblem? Refusal { get; private set; }

    /// <summary>The next line; null at the end, or when a limit is passed.</summary>
    public string? Next()
    {
        _line.Clear();
        var letter = _reader.Read();
        if (letter < 0) return null;
        Number++;
        for (; letter is >= 0 and not '\n'; letter = _reader.Read())
        {
            if (_line.Length == LongestLine || Number > MostLines || _letters == MostLetters) return Refuse();
            _letters++;
            _line.Append((char)letter);
        }
        return _line.ToString().TrimEnd('\r');
    }

    private string? Refuse()
    {
        var reason = FormattableString.Invariant(
            Number > MostLines ? $"The file has more than {MostLines:N0} lines; a weather file of one year has 8,768."
            : _line.Length == LongestLine ? (FormattableString)$"The line has more than {LongestLine:N0} letters; no line of a weather file is that long."
            : $"The file is larger than {EpwFile.LimitMegabytes} MB; a weather file has one or two.");
        Refusal = new(Number, null, "", $"{reason} Nothing was read.");
        return null;
    }
}
