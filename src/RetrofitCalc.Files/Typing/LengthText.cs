using System.Globalization;
using System.Text.RegularExpressions;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Files.Typing;

/// <summary>Units of length people type.</summary>
public enum LengthUnit
{
    Metres,
    Centimetres,
    Millimetres,
    Feet,
    Inches,
}

/// <summary>Heights and lengths as people type them: 1 ft 2 in, 14 ft, 0.35 m, 35 cm, or a plain number in their own unit.</summary>
public static partial class LengthText
{
    private static readonly (LengthUnit Unit, double Metres, string[] Words)[] Units =
    [
        (LengthUnit.Metres, 1, ["m", "metre", "metres", "meter", "meters"]),
        (LengthUnit.Centimetres, 0.01, ["cm", "centimetre", "centimetres", "centimeter", "centimeters"]),
        (LengthUnit.Millimetres, 0.001, ["mm", "millimetre", "millimetres", "millimeter", "millimeters"]),
        (LengthUnit.Feet, UnitConversions.MetresPerFoot, ["ft", "foot", "feet", "'", "′", "’"]),
        (LengthUnit.Inches, UnitConversions.MetresPerFoot / 12, ["in", "inch", "inches", "\"", "″", "”", "''"]),
    ];

    /// <summary>The length; null for a blank text. A plain number is in <paramref name="own"/> units.</summary>
    public static Parsed<Length?> Parse(string? text, CultureInfo culture, LengthUnit own)
    {
        var typed = (text ?? "").Trim();
        if (typed.Length == 0) return Parsed.Good<Length?>(null);
        var parts = Part().Matches(typed);
        if (parts.Count is 0 or > 2 || parts.Sum(p => p.Length) != typed.Length) return Bad(typed);
        var lengths = parts.Select(p => One(p, culture, parts.Count == 1 ? own : null)).ToList();
        if (lengths.FirstOrDefault(l => !l.Ok) is { } wrong) return new Parsed<Length?>(null, wrong.Problems);
        if (lengths.Count == 2 && !IsFeetAndInches(parts)) return Bad(typed);
        var metres = lengths.Sum(l => l.Value);
        return metres >= 0 ? Parsed.Good<Length?>(Length.FromMetres(metres)) : Parsed.Bad<Length?>($"{CellText.Quote(typed)} is negative; a height is zero or more.");
    }

    /// <summary>The length in one unit, with its word; it reads back as the same length to a tenth of a millimetre.</summary>
    public static string Write(Length length, CultureInfo culture, LengthUnit unit)
    {
        var (_, metres, words) = Units.First(u => u.Unit == unit);
        return $"{NumberText.Write(Math.Round(length.Metres / metres, 4), culture)} {words[0]}";
    }

    /// <summary>The unit a word names; null when it names none.</summary>
    public static LengthUnit? UnitOf(string word) =>
        Units.Where(u => u.Words.Contains(word, StringComparer.OrdinalIgnoreCase)).Select(u => (LengthUnit?)u.Unit).FirstOrDefault();

    private static Parsed<double> One(Match part, CultureInfo culture, LengthUnit? own)
    {
        var word = part.Groups["unit"].Value;
        var unit = word.Length == 0 ? own : UnitOf(word);
        if (unit is null) return Parsed.Bad<double>($"{CellText.Quote(part.Value.Trim())} has no unit this program knows. Use ft, in, m, cm or mm.");
        var number = NumberText.Parse(part.Groups["number"].Value, culture);
        return number.Value is { } value
            ? Parsed.Good(value * Units.First(u => u.Unit == unit).Metres)
            : new Parsed<double>(0, number.Problems);
    }

    private static bool IsFeetAndInches(IReadOnlyList<Match> parts) =>
        UnitOf(parts[0].Groups["unit"].Value) == LengthUnit.Feet && UnitOf(parts[1].Groups["unit"].Value) == LengthUnit.Inches;

    private static Parsed<Length?> Bad(string typed) =>
        Parsed.Bad<Length?>($"{CellText.Quote(typed)} is not a length. Type it like 14 ft, 1 ft 2 in, 0.35 m or 35 cm.");

    [GeneratedRegex("(?<number>[-+−]?[0-9.,]+(?:['’ \u00A0\u202F][0-9]{3})*[0-9.,]*)\\s*(?<unit>[A-Za-z]+|''|['\"′″’”]?)\\s*")]
    private static partial Regex Part();
}
