using System.Globalization;
using System.Text.RegularExpressions;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Typing;

namespace RetrofitCalc.Files.Readings;

/// <summary>A place in a heading of a table of readings: a length from the middle of the bench, with a sign, or a direction in degrees.</summary>
internal static partial class PlaceText
{
    /// <summary>The place in metres; null when it is no length.</summary>
    public static double? Metres(string text, CultureInfo culture, LengthUnit own)
    {
        var negative = text.StartsWith('-') || text.StartsWith('−');
        var length = LengthText.Parse(text[(negative ? 1 : 0)..], culture, own);
        return length.Value is { } found ? (negative ? -1 : 1) * found.Metres : null;
    }

    /// <summary>The direction; null when the text does not end with a degree sign or the word.</summary>
    public static double? Degrees(string text, CultureInfo culture)
    {
        var match = DegreeEnd().Match(text);
        return match.Success ? NumberText.Parse(text[..match.Index], culture).Value : null;
    }

    /// <summary>Whether a text carries its own unit, so that it can be no reading.</summary>
    public static bool HasUnit(string text) =>
        text.Any(char.IsAsciiDigit) && (LengthText.UnitOf(LastWord().Match(text).Value) is not null || DegreeEnd().IsMatch(text));

    /// <summary>Whether a text is the corner over places and readings: words, and no number.</summary>
    public static bool IsCorner(string text) => text.Any(char.IsLetter) && !text.Any(char.IsAsciiDigit);

    /// <summary>The unit of length a corner names, such as "y / x (cm)"; not the metre of "µmol m⁻² s⁻¹", nor the "in" of "lx in cm".</summary>
    public static LengthUnit? LengthUnitIn(string corner)
    {
        var words = LengthWords().Matches(corner).Select(word => word.Value).ToList();
        return words.Where((word, i) => i == words.Count - 1 || !word.Equals("in", StringComparison.OrdinalIgnoreCase))
            .Select(LengthText.UnitOf).LastOrDefault(unit => unit is not null);
    }

    /// <summary>The unit of light a corner names, such as "lx" or "µmol m⁻² s⁻¹".</summary>
    public static LightUnit? LightUnitIn(string corner) => Words().Matches(corner).Select(word => word.Value.ToLowerInvariant() switch
    {
        "µmol" or "μmol" or "umol" or "ppfd" => LightUnit.Micromoles,
        "lx" or "lux" => LightUnit.Lux,
        "fc" or "ftc" or "footcandle" or "footcandles" => LightUnit.FootCandles,
        _ => (LightUnit?)null,
    }).FirstOrDefault(unit => unit is not null);

    [GeneratedRegex("\\s*(?:°|deg|degree|degrees)$", RegexOptions.IgnoreCase)]
    private static partial Regex DegreeEnd();

    [GeneratedRegex("(?:[A-Za-z]+|[°'\"′″’”]+)$")]
    private static partial Regex LastWord();

    [GeneratedRegex("\\p{L}+(?![\\p{L}⁻²^/0-9-])")]
    private static partial Regex LengthWords();

    [GeneratedRegex("\\p{L}+")]
    private static partial Regex Words();
}
