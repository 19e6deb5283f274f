using System.Globalization;

namespace RetrofitCalc.Files.Meters.Tables;

/// <summary>Numbers of a meter file: one decimal mark for the whole file, the other mark only between groups of three digits.</summary>
public static class MeterNumber
{
    private const int Longest = 40;

    /// <summary>The number; null when it is none.</summary>
    public static double? Parse(ReadOnlySpan<char> text, char decimalMark)
    {
        text = text.Trim();
        if (text.IsEmpty || text.Length > Longest) return null;
        Span<char> plain = stackalloc char[Longest];
        var (length, group, digits) = (0, -1, 0);
        foreach (var letter in text)
        {
            if (letter == decimalMark || !IsGroupMark(letter, decimalMark))
            {
                if (letter == decimalMark && group >= 0 && digits != 3) return null;
                if (letter == decimalMark) group = -1;
                plain[length++] = letter == decimalMark ? '.' : letter == '−' ? '-' : letter;
                digits++;
                continue;
            }
            if (group >= 0 ? digits != 3 : digits is 0 or > 4) return null;
            (group, digits) = (length, 0);
        }
        if (group >= 0 && digits != 3) return null;
        const NumberStyles plainNumber = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;
        return double.TryParse(plain[..length], plainNumber, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number) ? number : null;
    }

    /// <summary>
    /// The decimal mark of some values. Two kinds of mark: the last in a value. One kind, never twice in a value: that one, as meters
    /// write no groups. None: a point.
    /// </summary>
    public static char MarkOf(IEnumerable<string> values)
    {
        var (points, commas) = (0, 0);
        foreach (var value in values)
        {
            var (point, comma) = (value.LastIndexOf('.'), value.LastIndexOf(','));
            if (point < 0 && comma < 0) continue;
            var twice = point > comma ? value.IndexOf('.') != point : value.IndexOf(',') != comma;
            if (point > comma != twice) points++;
            else commas++;
        }
        return commas > points ? ',' : '.';
    }

    private static bool IsGroupMark(char letter, char decimalMark) =>
        letter is '.' or ',' or '\'' or '’' or ' ' or '\u00A0' or '\u202F' or '\u2009' && letter != decimalMark;
}
