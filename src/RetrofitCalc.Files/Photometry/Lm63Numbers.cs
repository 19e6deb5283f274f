using System.Globalization;

namespace RetrofitCalc.Files.Photometry;

/// <summary>A number and where it stands.</summary>
internal readonly record struct PlacedNumber(double Value, int Line, int Column);

/// <summary>
/// The numbers below the TILT line one after another, wherever lines break. The first problem ends the reading: later ones give zero, and
/// <see cref="Problem"/> says what was wrong.
/// </summary>
internal sealed class Lm63Numbers(string[] lines, int from)
{
    private int _line = from;
    private int _column;

    public FileProblem? Problem { get; private set; }

    public bool OtherSeparators { get; private set; }

    /// <summary>Line of the number read last, from 1.</summary>
    public int Line { get; private set; } = from;

    public PlacedNumber Next(string what)
    {
        if (Problem is not null) return default;
        if (Token() is not { } token) return Fail(lines.Length, null, $"The file ends before {what}.");
        Line = token.Line;
        if (!double.TryParse(token.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) || !double.IsFinite(value))
            return Fail(token.Line, token.Column, $"{CellText.Quote(token.Text)} is not a number; {what} should stand here.");
        return Math.Abs(value) > PhotometricLimits.LargestNumber
            ? Fail(token.Line, token.Column, $"{CellText.Quote(token.Text)} is too large for {what}.")
            : new(value, token.Line, token.Column);
    }

    /// <summary>A number within limits, both included.</summary>
    public double Within(string what, double low, double high)
    {
        var number = Next(what);
        if (Problem is not null || (number.Value >= low && number.Value <= high)) return number.Value;
        return Reject(number, FormattableString.Invariant($"{what} is {number.Value}; it must be {low} to {high}.")).Value;
    }

    public int Whole(string what, int low, int high)
    {
        var number = Next(what);
        if (Problem is null && (number.Value != Math.Floor(number.Value) || number.Value < low || number.Value > high))
            Reject(number, FormattableString.Invariant($"{what} is {number.Value}; it must be a whole number, {low} to {high}."));
        return Problem is null ? (int)number.Value : 0;
    }

    public PlacedNumber[] Many(int count, string what)
    {
        var numbers = new List<PlacedNumber>();
        for (var i = 1; i <= count && Problem is null; i++) numbers.Add(Next($"{what} {i} of {count}"));
        return [.. numbers];
    }

    public PlacedNumber Reject(PlacedNumber number, string message) => Problem is null ? Fail(number.Line, number.Column, message) : default;

    public bool AnyLeft => Token() is not null;

    private PlacedNumber Fail(int line, int? column, string message)
    {
        Problem = new(line, column, "", message);
        return default;
    }

    private (string Text, int Line, int Column)? Token()
    {
        for (; _line < lines.Length; _line++, _column = 0)
        {
            var line = lines[_line];
            while (_column < line.Length && IsBetween(line[_column])) _column++;
            if (_column == line.Length) continue;
            var start = _column;
            while (_column < line.Length && !IsBetween(line[_column])) _column++;
            return (line[start.._column], _line + 1, start + 1);
        }
        return null;
    }

    private bool IsBetween(char letter)
    {
        if (letter is not (',' or ';')) return char.IsWhiteSpace(letter);
        OtherSeparators = true;
        return true;
    }
}
