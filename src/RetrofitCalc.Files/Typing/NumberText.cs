using System.Globalization;

namespace RetrofitCalc.Files.Typing;

/// <summary>
/// Numbers as people type them, with the decimal mark and grouping of their culture. What could mean two things is refused:
/// the framework would read 1,5 as fifteen under en-US.
/// </summary>
public static class NumberText
{
    private const string AllSpaces = "\u00A0\u202F\u2009 ";

    /// <summary>The number; null for a blank text.</summary>
    public static Parsed<double?> Parse(string? text, CultureInfo culture)
    {
        var typed = (text ?? "").Trim();
        if (typed.Length == 0) return Parsed.Good<double?>(null);
        var plain = NumberMarks.Of(culture).Plain(typed);
        if (plain.Value is null) return Parsed.Bad<double?>([.. plain.Problems]);
        var number = double.Parse(plain.Value, NumberStyles.Float, CultureInfo.InvariantCulture);
        return double.IsFinite(number) ? Parsed.Good<double?>(number) : Parsed.Bad<double?>($"{CellText.Quote(typed)} is too large a number.");
    }

    /// <summary>The whole number, zero or more; null for a blank text.</summary>
    public static Parsed<int?> ParseCount(string? text, CultureInfo culture)
    {
        var number = Parse(text, culture);
        return number switch
        {
            { Ok: false } => new Parsed<int?>(null, number.Problems),
            { Value: null } => Parsed.Good<int?>(null),
            { Value: < 0 } => Parsed.Bad<int?>($"{CellText.Quote(text!.Trim())} is negative; a count is zero or more."),
            { Value: { } value } when value != Math.Floor(value) => Parsed.Bad<int?>($"{CellText.Quote(text!.Trim())} is not a whole number."),
            { Value: > int.MaxValue } => Parsed.Bad<int?>($"{CellText.Quote(text!.Trim())} is too large a count."),
            { Value: { } value } => Parsed.Good<int?>((int)value),
        };
    }

    /// <summary>The number as its culture writes it, without grouping; it reads back as the same number.</summary>
    public static string Write(double value, CultureInfo culture) =>
        value.ToString("0.###############", culture) is var text && Parse(text, culture).Value == value ? text : value.ToString("R", culture);

    internal static bool IsSpace(char mark) => AllSpaces.Contains(mark);
}
